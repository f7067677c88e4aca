package pitchboard.strength.timber;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import pitchboard.measure.Length;
import pitchboard.strength.AreaLoad;
import pitchboard.strength.LineLoad;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.Spans;

/** Span tables that codes print, and how each of their cells is reckoned. */
final class PrintedSpans {
    private static final String FILE = "printed-spans.csv";

    private PrintedSpans() {}

    /** One printed cell. */
    record Cell(String table, String species, String grade, String size, Length spacing, String load, int inches) {
        /** Why the printed figure is taken for a misprint; empty when it is not. */
        boolean isSuspect() {
            boolean hemFir = species.equals("Hem-Fir") && size.equals("2x12") && inches == 202;
            boolean fir = species.startsWith("Douglas") && size.equals("2x10") && inches == 215;
            return table.startsWith("IRC2012") && (hemFir || fir);
        }

        private boolean isWet() {
            return load.contains("wet");
        }

        private boolean isIncised() {
            return species.contains("incised");
        }

        double reckonedInches() {
            return members().mapToDouble(this::inches).min().orElseThrow();
        }

        private Stream<String> members() {
            if (isIncised()) {
                return Stream.of("Douglas Fir-Larch", "Hem-Fir", "Spruce-Pine-Fir");
            }
            // The weakest of its group are the northern species, whose values the guide says it took.
            return species.startsWith("Redwood")
                    ? Stream.of("Redwood", "Western Cedars", "Northern Species")
                    : Stream.of(species);
        }

        private double inches(String member) {
            boolean older = member.contains("(pre-") || (table.startsWith("IBC2018") && isWestern(member));
            String name = member.replaceAll(" \\(pre-.*", "");
            ValueTable values = older ? EarlierValues.table() : Supplement2018.table();
            String[] sides = size.split("x", -1);
            LumberSize lumber = LumberSize.named(Integer.parseInt(sides[0]), Integer.parseInt(sides[1]));
            DesignValues found = values.find(name, gradeOf(name), lumber).orThrow();
            Adjusting board = Adjusting.of(found, lumber, conditions()).orThrow();
            Section section = new Section(lumber.actualThickness(), lumber.actualWidth());
            Resistance bending = board.bendingOnEdge(new Bracing.Held("the deck holds the edge"))
                    .orThrow();
            Length span = Length.min(
                    Spans.byBending(across(part("LL") + part("DL")), section, bending.value()),
                    Spans.byDeflection(
                            across(part("LL")), section, board.modulus().value(), load.contains("L/240") ? 240 : 360));
            return Math.min(span.approxMm() / 25.4, table.startsWith("DCA6") ? 216 : 312);
        }

        private static boolean isWestern(String member) {
            return member.equals("Douglas Fir-Larch") || member.equals("Hem-Fir");
        }

        private String gradeOf(String name) {
            boolean together = name.equals("Spruce-Pine-Fir") || name.equals("Northern Species");
            return together && List.of("No.1", "No.2").contains(grade) ? "No.1/No.2" : grade;
        }

        private Conditions conditions() {
            Conditions use = Conditions.ORDINARY.with(Conditions.Sharing.REPETITIVE);
            Conditions long1 = load.contains("CD1.25") ? use.with(Conditions.Duration.SEVEN_DAYS) : use;
            Conditions wet = isWet() ? long1.with(Conditions.Moisture.WET) : long1;
            return isIncised() ? wet.with(Conditions.Treatment.INCISED) : wet;
        }

        private LineLoad across(double psf) {
            return AreaLoad.psf(psf).across(spacing);
        }

        private double part(String name) {
            for (String word : load.replace("RLL", "LL").split(" ", -1)) {
                if (word.startsWith(name)) {
                    return Double.parseDouble(word.substring(name.length()));
                }
            }
            throw new IllegalStateException("no " + name + " in " + load);
        }
    }

    static List<Cell> all() {
        return text().lines()
                .filter(line -> !line.startsWith("#") && !line.startsWith("table,"))
                .map(line -> line.split(",", -1))
                .map(PrintedSpans::cell)
                .toList();
    }

    private static Cell cell(String[] row) {
        Length spacing =
                row[4].equals("19.2") ? Length.inches(96).dividedBy(5) : Length.inches(Integer.parseInt(row[4]));
        int inches = 12 * Integer.parseInt(row[6]) + Integer.parseInt(row[7]);
        return new Cell(row[0], row[1], row[2], row[3], spacing, row[5], inches);
    }

    private static String text() {
        try (InputStream in = PrintedSpans.class.getResourceAsStream(FILE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
