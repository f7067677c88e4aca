package pitchboard.stair;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.OrdinaryJob;
import pitchboard.Read;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** A straight flight as a book prints it: a row of {@code straight-flights.csv}, which says where each is from. */
record PrintedFlight(String id, String source, Tape tape, List<String> cells) {
    private static final String TABLE = "straight-flights.csv";

    static Stream<PrintedFlight> all() {
        try (InputStream table = Objects.requireNonNull(PrintedFlight.class.getResourceAsStream(TABLE), TABLE)) {
            String text = new String(table.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> !line.startsWith("#")).skip(1).map(PrintedFlight::of);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static PrintedFlight of(String line) {
        List<String> cells = List.of(line.split(";", -1));
        Tape tape = cells.get(4).equals("in") ? Tape.SIXTEENTHS : Tape.MILLIMETRES;
        return new PrintedFlight(cells.get(0), cells.get(1) + ", " + cells.get(2), tape, cells);
    }

    private Optional<Length> findLength(int column) {
        return Optional.of(cells.get(column))
                .filter(cell -> !cell.isEmpty())
                .map(cell -> Read.length(cell, tape.units()));
    }

    Length totalRise() {
        return findLength(5).orElseThrow();
    }

    int risers() {
        return Integer.parseInt(cells.get(6));
    }

    Optional<Length> findRise() {
        return findLength(7);
    }

    /** The exact rise, as a mixed number of the row's unit. */
    String exactRise() {
        return cells.get(8);
    }

    /** Printed risers times printed rise, over the printed total rise, as a mixed number of the row's unit. */
    String over() {
        return cells.get(9);
    }

    boolean isExact() {
        return over().equals("0");
    }

    Optional<Integer> findTreads() {
        return Optional.of(cells.get(10)).filter(cell -> !cell.isEmpty()).map(Integer::valueOf);
    }

    Optional<Length> findRun() {
        return findLength(11);
    }

    Optional<Length> findTotalRun() {
        return findLength(12);
    }

    /** An ordinary job of this height on this tape; the treads reach over the printed run. */
    OrdinaryJob job() {
        Length run = findRun().orElse(Length.inches(10));
        OrdinaryJob job = OrdinaryJob.ofRise(totalRise()).treads(run.plus(Length.inches(1)), Length.inches(1));
        return tape.isInches() ? job : job.millimetres();
    }

    @Override
    public String toString() {
        return id + " " + source;
    }
}
