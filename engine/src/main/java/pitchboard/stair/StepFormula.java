package pitchboard.stair;

import java.util.function.Function;
import pitchboard.measure.Area;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.source.Clause;
import pitchboard.source.Confidence;
import pitchboard.source.Edition;

/**
 * The published rules of thumb for a comfortable step. None of them binds; they rank stairs that are already allowed.
 */
public enum StepFormula {
    PACE(
            "2R + T",
            "two rises and a run make a pace",
            stair -> stair.rise().times(2).plus(stair.run()).inInches(),
            Ratio.of(24),
            Ratio.of(25),
            armyCourse("rule 1 (25 in), and 24 in after Hodgson, Stair-Building")),
    PACE_METRIC(
            "2R + T",
            "two rises and a run make a pace of 630 to 650 mm",
            stair -> stair.rise().times(2).plus(stair.run()).inInches(),
            millimetres(630),
            millimetres(650),
            blondel("2R + T")),
    SUM(
            "R + T",
            "a rise and a run",
            stair -> stair.rise().plus(stair.run()).inInches(),
            Ratio.of(17),
            Ratio.of(19),
            armyCourse("rule 2")),
    PRODUCT(
            "R × T",
            "a rise times a run",
            stair -> Area.of(stair.rise(), stair.run()).squareInches(),
            Ratio.of(70),
            Ratio.of(75),
            new Edition("New York Multiple Residence Law", "current", "NY Multiple Residence Law")
                    .clause("s. 132", Confidence.READ)),
    SAFETY(
            "R + T",
            // The rule names one figure; the centimetre either side is ours.
            "a rise and a run within 10 mm of 460 mm, the safety rule",
            stair -> stair.rise().plus(stair.run()).inInches(),
            millimetres(450),
            millimetres(470),
            blondel("safety rule"));

    private final String expression;
    private final String meaning;
    private final Function<Stair, Ratio> inchValue;
    private final Ratio low;
    private final Ratio high;
    private final Clause clause;

    StepFormula(
            String expression, String meaning, Function<Stair, Ratio> inchValue, Ratio low, Ratio high, Clause clause) {
        this.expression = expression;
        this.meaning = meaning;
        this.inchValue = inchValue;
        this.low = low;
        this.high = high;
        this.clause = clause;
    }

    private static Clause armyCourse(String rule) {
        return new Edition("US Army Engineer subcourse EN5156, interior carpentry", "pp 2-27 to 2-29", "EN5156")
                .clause(rule, Confidence.READ);
    }

    private static Clause blondel(String rule) {
        return new Edition("Blondel, Cours d'architecture, as quoted in course notes", "1675", "after Blondel")
                .clause(rule, Confidence.READ_ELSEWHERE);
    }

    private static Ratio millimetres(long mm) {
        return Length.mm(mm).inInches();
    }

    /** In the symbols of the trade: R the rise, T the run. */
    public String expression() {
        return expression;
    }

    public String meaning() {
        return meaning;
    }

    public Clause clause() {
        return clause;
    }

    /** The value in inches, or square inches for the product. */
    public Ratio of(Stair stair) {
        return inchValue.apply(stair);
    }

    public Ratio low() {
        return low;
    }

    public Ratio high() {
        return high;
    }

    public boolean suits(Stair stair) {
        Ratio value = of(stair);
        return value.compareTo(low) >= 0 && value.compareTo(high) <= 0;
    }
}
