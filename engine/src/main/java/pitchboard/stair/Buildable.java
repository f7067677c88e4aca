package pitchboard.stair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Stringers;
import pitchboard.brief.Support;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.site.Measured;

/** What wood and space say of a stair, before any code is asked. */
public final class Buildable implements Gate {
    private static final String GEOMETRY = "geometry";
    private static final String MEASURED = "measured";

    @Override
    public List<Objection> objections(Stair stair) {
        StringerShape shape = new StringerShape(stair);
        List<Objection> found = new ArrayList<>();
        space(stair).ifPresent(found::add);
        treadsCoverTheRun(stair).ifPresent(found::add);
        treadsStandClear(stair).ifPresent(found::add);
        stringersStandApart(stair).ifPresent(found::add);
        supportStandsUnder(stair).ifPresent(found::add);
        Optional<Objection> nothingLeft = woodLeft(shape);
        nothingLeft.ifPresent(found::add);
        // Without wood under the steps there are no ends to look at.
        if (nothingLeft.isEmpty()) {
            found.addAll(new FootCut(shape).objections());
            found.addAll(new HeadCut(shape).objections());
        }
        return found;
    }

    private static Optional<Objection> space(Stair stair) {
        Length taken = stair.spaceTaken();
        return stair.site()
                .runAvailable()
                .map(Measured::value)
                .filter(taken::isMoreThan)
                .map(available -> new Objection(
                        "space",
                        "level space taken, header to first nosing",
                        taken,
                        available,
                        MEASURED,
                        Phrase.of("find more run, or climb in fewer, higher steps where the code lets you")));
    }

    private static Optional<Objection> treadsCoverTheRun(Stair stair) {
        Length width = stair.brief().treads().width();
        if (width.isAtLeast(stair.run())) {
            return Optional.empty();
        }
        return against(
                "tread-covers-run", "width of a tread", width, stair.run(), "use wider tread boards, or a shorter run");
    }

    private static Optional<Objection> treadsStandClear(Stair stair) {
        if (stair.treadThickness().isLessThan(stair.rise())) {
            return Optional.empty();
        }
        return against(
                "treads-clear",
                "thickness of a tread",
                stair.treadThickness(),
                stair.rise(),
                "use thinner treads, or fewer, higher steps");
    }

    private static Optional<Objection> stringersStandApart(Stair stair) {
        Stringers stringers = stair.brief().stringers();
        Length wood = stringers.stock().thickness().times(stringers.count());
        Length room = stair.brief().width().minus(stringers.treadOverhang().times(2));
        if (wood.isAtMost(room)) {
            return Optional.empty();
        }
        return against(
                "stringers-fit",
                "thickness of all stringers together",
                wood,
                room,
                "use fewer stringers, less overhang of the treads, or a wider flight");
    }

    private static Optional<Objection> supportStandsUnder(Stair stair) {
        return stair.brief()
                .support()
                .map(Support::at)
                .filter(at -> at.isAtLeast(stair.headerFace()))
                .flatMap(at -> against(
                        "support-fits",
                        "from the first riser cut to the middle of the support",
                        at,
                        stair.headerFace(),
                        "set the support nearer the foot, or leave it out"));
    }

    private static Optional<Objection> woodLeft(StringerShape shape) {
        // A notch is less deep than the rise, so most boards need no square root to pass.
        if (shape.stair().rise().isLessThan(shape.boardDepth())
                || shape.throat().isPositive()) {
            return Optional.empty();
        }
        return against(
                "wood-left",
                "depth cut out of the stringer",
                shape.notchDepth(),
                shape.boardDepth(),
                "use deeper stock for the stringers");
    }

    /** An objection of plain geometry. */
    static Optional<Objection> against(String id, String what, Quantity measured, Quantity limit, String change) {
        return Optional.of(new Objection(id, what, measured, limit, GEOMETRY, Phrase.of(change)));
    }
}
