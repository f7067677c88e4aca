package pitchboard.strength.fasteners;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.strength.Answer;

/** The cells of printed tables: {@code sheared.csv} and {@code pulled.csv}, which say where each comes from. */
final class PrintedCells {
    private PrintedCells() {}

    static List<Sheared> sheared() {
        return rows("sheared.csv").map(Sheared::new).toList();
    }

    static List<Pull> pulled() {
        return rows("pulled.csv").map(Pull::new).toList();
    }

    private static Stream<List<String>> rows(String file) {
        try (InputStream in = PrintedCells.class.getResourceAsStream(file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> !line.startsWith("#")).map(line -> List.of(line.split("; ", -1)));
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    static Length inches(String text) {
        return Length.inches(Decimals.ratio(Double.parseDouble(text), 9));
    }

    static Answer<Fastener> fastener(String kind, String size) {
        double number = Double.parseDouble(size);
        return switch (Fastener.Kind.valueOf(kind)) {
            case NAIL -> Fastener.nail(new Diameter(number));
            case WOOD_SCREW -> Fastener.woodScrew((int) number);
            case LAG_SCREW -> Fastener.lagScrew(new Diameter(number));
            case BOLT -> Fastener.bolt(new Diameter(number));
        };
    }

    /** A fastener sheared between two members of the same wood. */
    record Sheared(List<String> cells) {
        Lateral reckoned() {
            Fastener fastener = fastener(cells.get(1), cells.get(2)).orThrow();
            double gravity = Double.parseDouble(cells.get(8));
            Member main = Member.wood(gravity, fastener, inches(cells.get(3)), Double.parseDouble(cells.get(5)))
                    .orThrow();
            Member side = Member.wood(gravity, fastener, inches(cells.get(4)), Double.parseDouble(cells.get(6)))
                    .orThrow();
            return Lateral.of(fastener, main, side, YieldLimit.Shear.valueOf(cells.get(7)));
        }

        double printed() {
            return Double.parseDouble(cells.get(9));
        }

        double half() {
            return Double.parseDouble(cells.get(10)) / 2;
        }

        String mode() {
            return cells.get(11).toUpperCase(Locale.ROOT);
        }

        boolean isDoubtful() {
            return cells.get(12).equals("DOUBTFUL");
        }

        @Override
        public String toString() {
            return String.join(" ", cells.subList(0, 10));
        }
    }

    record Pull(List<String> cells) {
        double reckoned() {
            Fastener fastener = fastener(cells.get(1), cells.get(2)).orThrow();
            return Pulled.out(fastener, Double.parseDouble(cells.get(3)), Length.inches(1), Pulled.Grain.SIDE)
                    .orThrow()
                    .value()
                    .pounds();
        }

        double printed() {
            return Double.parseDouble(cells.get(4));
        }

        double half() {
            return Double.parseDouble(cells.get(5)) / 2;
        }

        @Override
        public String toString() {
            return String.join(" ", cells.subList(0, 5));
        }
    }
}
