package pitchboard.strength.timber;

import java.util.List;
import pitchboard.source.Clause;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;

/** The size factor and the flat use factor (NDS 2018 Supplement, adjustment factors of Tables 4A and 4B). */
final class SizeFactors {
    private static final Clause CLAUSE = Nds.SUPPLEMENT.read("Table 4A, size factor");
    private static final Clause FLAT = Nds.SUPPLEMENT.read("Table 4A, flat use factor");
    private static final String SIZE = "size";
    private static final int STUD_WIDEST = 6;

    /** Up to so wide a board, in name: on bending of 2 and 3 in boards, on bending of 4 in boards, on compression. */
    private record Step(int width, double thin, double thick, double compression) {}

    private static final List<Step> STEPS = List.of(
            new Step(4, 1.5, 1.5, 1.15),
            new Step(5, 1.4, 1.4, 1.1),
            new Step(6, 1.3, 1.3, 1.1),
            new Step(8, 1.2, 1.3, 1.05),
            new Step(10, 1.1, 1.2, 1.0),
            new Step(12, 1.0, 1.1, 1.0),
            new Step(Integer.MAX_VALUE, 0.9, 1.0, 0.9));

    private SizeFactors() {}

    /** {@code CF} on bending. */
    static Answer<Factor> onBending(DesignValues values, LumberSize size) {
        Step step = step(size);
        return factor(values, size, size.thickness() >= 4 ? step.thick() : step.thin(), size.width() <= 4 ? 1.1 : 1.0);
    }

    /** {@code CF} on tension along the grain. */
    static Answer<Factor> onTension(DesignValues values, LumberSize size) {
        return factor(values, size, step(size).thin(), size.width() <= 4 ? 1.1 : 1.0);
    }

    /** {@code CF} on compression along the grain. */
    static Answer<Factor> onCompression(DesignValues values, LumberSize size) {
        return factor(values, size, step(size).compression(), size.width() <= 4 ? 1.05 : 1.0);
    }

    private static Step step(LumberSize size) {
        return STEPS.stream()
                .filter(each -> size.width() <= each.width())
                .findFirst()
                .orElseThrow();
    }

    private static Answer<Factor> factor(DesignValues values, LumberSize size, double graded, double stud) {
        if (values.sizeInside()) {
            return Answer.known(
                    Factor.idle("CF", SIZE, "the published value is that of a " + size.name() + " already", CLAUSE));
        }
        if (values.isStud() && size.width() > STUD_WIDEST) {
            return Answer.unknown("stud grade has no values for boards wider than a 2x6; say No.3 for those");
        }
        double value = values.isStud() ? stud : graded;
        return Answer.known(new Factor("CF", SIZE, value, "for a " + size.name() + " of this grade", CLAUSE));
    }

    /** {@code Cfu} of a board that carries on its wide face. */
    static Factor flatUse(LumberSize size) {
        boolean thick = size.thickness() >= 4;
        String because = "it carries on its wide face, as a " + size.name();
        return new Factor("Cfu", "flat use", thick ? thickFlat(size.width()) : thinFlat(size.width()), because, FLAT);
    }

    private static double thinFlat(int width) {
        if (width <= 3) {
            return 1.0;
        }
        return width <= 5 ? 1.1 : width <= 8 ? 1.15 : 1.2;
    }

    private static double thickFlat(int width) {
        return width <= 4 ? 1.0 : width <= 8 ? 1.05 : 1.1;
    }
}
