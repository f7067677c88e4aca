package pitchboard.carry.joints;

import pitchboard.source.Confidence;
import pitchboard.source.Practice;
import pitchboard.source.Source;

/** What to mind beyond what was reckoned, in whole sentences. */
public record Caution(String text, Source source) {
    /** With its source. */
    public String words() {
        String doubt = source.confidence().caution();
        return text + " [" + source.citation() + (doubt.isEmpty() ? "" : "; " + doubt) + "]";
    }

    private static final Source POST_TESTS = new Practice(
            "university tests of deck posts, Journal of Light Construction, February 2005", Confidence.READ);

    static final Caution NOTCHED_POST = new Caution(
            "In tests 4x4 posts notched over the rim and held by 1/2 in lag screws failed at 146 to 211 lb; do not notch a "
                    + "post where it is fixed.",
            POST_TESTS);

    static final Caution BOLTS_ALONE = new Caution(
            "In tests 4x4 posts with two 1/2 in bolts through the rim alone failed at 217 to 248 lb, less than half of the "
                    + "500 lb that a guard is tested with: the rim peeled off its joists.",
            POST_TESTS);

    static final Caution HOLD_DOWN = new Caution(
            "In tests only a steel hold-down from the post's upper bolt back to a joist passed 500 lb.", POST_TESTS);

    public static final Caution CUT_EDGE = new Caution(
            "Over a support the cut edge of a stringer is in tension, and may open at a corner of a step. So it is reckoned "
                    + "both as running on over the support and as ending there, and what asks more counts; it may as well be "
                    + "cut through there, each part bearing on the post. Let an engineer see it where it matters.",
            Practice.STATICS);

    static final Caution SHORT_LOAD = new Caution(
            "Whether the 200 lb may count as a load of ten minutes, which would allow 1.6 times as much, is debated among "
                    + "engineers; here it does not.",
            new Practice("no document settles it", Confidence.COMMON_PRACTICE));

    static final Caution FROST = new Caution(
            "Ask how deep the ground freezes there, and whether this stair is excused from going below it.",
            new Practice("IRC R403.1.4.1", Confidence.FROM_MEMORY));

    static final Caution TRUE_SOIL = new Caution(
            "The bearing of the ground is presumed from its kind; filled or soft ground carries less. Ask the local "
                    + "building office.",
            new Practice("IRC R401.4.1", Confidence.READ));
}
