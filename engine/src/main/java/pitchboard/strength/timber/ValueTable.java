package pitchboard.strength.timber;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import pitchboard.source.Clause;
import pitchboard.strength.Answer;
import pitchboard.strength.Stress;

/** Published values, as rows of one table or of several together. */
public final class ValueTable {
    private static final int COMMON_CELLS = 4;

    private final List<Row> rows;

    /** One row; the size is empty when it stands for every width. */
    private record Row(DesignValues values, Optional<String> size) {}

    private ValueTable(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    /**
     * Reads a table. A line at the margin names a species, then {@code Fv}, {@code Fc,perp} and {@code G}; the lines set in
     * below it give a grade, a size where the values are those of one size, then {@code Fb Ft Fc E Emin}; all in psi.
     */
    static ValueTable read(String text, Clause source) {
        List<Row> rows = new ArrayList<>();
        String[] common = {};
        for (String line : text.strip().split("\n", -1)) {
            String[] cells = cells(line);
            if (line.startsWith(" ")) {
                rows.add(row(common, cells, source));
            } else {
                common = cells;
            }
        }
        return new ValueTable(rows);
    }

    private static String[] cells(String line) {
        String[] cells = line.split("\\|", -1);
        for (int i = 0; i < cells.length; i++) {
            cells[i] = cells[i].strip();
        }
        return cells;
    }

    private static Row row(String[] species, String[] grade, Clause source) {
        if (species.length < COMMON_CELLS) {
            throw new IllegalArgumentException("no species stands above " + String.join(" | ", grade));
        }
        boolean ofOneSize = grade.length == 7;
        int at = ofOneSize ? 2 : 1;
        DesignValues values = new DesignValues(
                species[0],
                grade[0],
                psi(grade[at]),
                psi(grade[at + 1]),
                psi(species[1]),
                psi(species[2]),
                psi(grade[at + 2]),
                psi(grade[at + 3]),
                psi(grade[at + 4]),
                Double.parseDouble(species[3]),
                ofOneSize,
                source);
        return new Row(values, ofOneSize ? Optional.of(grade[1]) : Optional.empty());
    }

    private static Stress psi(String cell) {
        return Stress.psi(Double.parseDouble(cell));
    }

    ValueTable and(ValueTable other) {
        List<Row> all = new ArrayList<>(rows);
        all.addAll(other.rows);
        return new ValueTable(all);
    }

    /** Every species, in the order of the table. */
    public List<String> species() {
        LinkedHashSet<String> names = new LinkedHashSet<>();
        rows.forEach(row -> names.add(row.values().species()));
        return List.copyOf(names);
    }

    /** Every grade of a species; empty when the table does not have it. */
    public List<String> grades(String species) {
        LinkedHashSet<String> names = new LinkedHashSet<>();
        rows.stream()
                .filter(row -> row.values().species().equals(species))
                .forEach(row -> names.add(row.values().grade()));
        return List.copyOf(names);
    }

    /** The values of a species and grade for a board of this size; else what the table has instead. */
    public Answer<DesignValues> find(String species, String grade, LumberSize size) {
        if (!species().contains(species)) {
            return Answer.unknown(
                    "no values are known for " + species + "; they are for " + String.join(", ", species()));
        }
        List<Row> graded = rows.stream()
                .filter(row -> row.values().species().equals(species)
                        && row.values().grade().equals(grade))
                .toList();
        if (graded.isEmpty()) {
            return Answer.unknown("no values are known for " + species + " " + grade + "; its grades are "
                    + String.join(", ", grades(species)));
        }
        return graded.stream()
                .filter(row -> row.size().map(size.name()::equals).orElse(true))
                .findFirst()
                .map(row -> Answer.known(row.values()))
                .orElseGet(() -> Answer.unknown("the table has " + species + " " + grade + " in "
                        + String.join(
                                ", ",
                                graded.stream()
                                        .flatMap(row -> row.size().stream())
                                        .toList())
                        + ", not as " + size.name()));
    }
}
