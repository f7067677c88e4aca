package pitchboard.carry.joints;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;
import pitchboard.strength.Units;

/**
 * A guard's post held by two bolts through a rim or outer stringer, pushed outward at the rail.
 *
 * @param push level, at the rail; 200 lb in the codes
 * @param railHeight of the push over the walking surface
 * @param decking from the walking surface down to the rim's upper edge
 * @param rimDepth of the rim
 * @param boltToEdge of the upper bolt from the rim's upper edge, and of the lower one from its lower edge
 * @param post its section, the depth in the direction of the push
 */
public record GuardPost(
        Force push, Length railHeight, Length decking, Length rimDepth, Length boltToEdge, Section post) {
    /** From the push down to the upper bolt. */
    public Length lever() {
        return railHeight.plus(decking).plus(boltToEdge);
    }

    /** Between the bolts. */
    public Length arm() {
        return rimDepth.minus(boltToEdge).minus(boltToEdge);
    }

    /** The couple in the bolts, or why there is none. */
    public Answer<Couple> couple() {
        if (!push.isPositive()) {
            return Answer.unknown("the push at the rail must be above zero");
        }
        if (!arm().isPositive() || !lever().isPositive()) {
            return Answer.unknown(
                    "two bolts so far from the edges of the rim leave nothing between them; take a deeper one, or set the posts where there is more of it behind them");
        }
        double share = lever().approxMm() / arm().approxMm();
        return Answer.known(new Couple(push.times(share + 1), push.times(share)));
    }

    /**
     * What the bolts do when the rail is pushed outward; pushed inward they change places.
     *
     * @param pull of the upper bolt, {@code P (h + a) / a}
     * @param thrust at the lower one, {@code P h / a}
     */
    public record Couple(Force pull, Force thrust) {}

    /** {@code fb = P h / S} at the upper bolt. */
    public Stress bending() {
        return new Stress(push.newtons() * lever().approxMm() / post.modulusMm3());
    }

    /** The working, in order; nothing but the lever where there is no couple. */
    public List<Figure> steps(Units units) {
        Figure p = Figure.given("P", "push at the rail", units.show(push), Practice.ASKED_FOR);
        Figure h = Figure.derived(
                "h",
                "lever from the rail to the upper bolt",
                "height + decking + edge",
                lever(),
                new Figure.Input("height", railHeight),
                new Figure.Input("decking", decking),
                new Figure.Input("edge", boltToEdge));
        Figure a = Figure.derived(
                "a",
                "between the bolts",
                "depth − 2 × edge",
                arm(),
                new Figure.Input("depth", rimDepth),
                new Figure.Input("edge", boltToEdge));
        return couple().match(
                        found -> List.of(
                                h,
                                a,
                                Working.force(
                                        "T",
                                        "pull of the upper bolt",
                                        "P (h + a) / a",
                                        found.pull(),
                                        units,
                                        Working.STATICS,
                                        p,
                                        h,
                                        a),
                                Working.force(
                                        "C",
                                        "thrust at the lower bolt",
                                        "P h / a",
                                        found.thrust(),
                                        units,
                                        Working.STATICS,
                                        p,
                                        h,
                                        a)),
                        because -> List.of(h));
    }
}
