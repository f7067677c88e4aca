package pitchboard.stair;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;

/** What wood and space say of a stair, before any code is asked. */
public final class Buildable implements Gate {
    private static final String GEOMETRY = "geometry";

    @Override
    public List<Objection> objections(Stair stair) {
        List<Objection> found = new ArrayList<>();
        space(stair, found);
        treads(stair, found);
        wood(stair, found);
        if (found.stream().noneMatch(objection -> objection.id().equals("wood-left"))) {
            ends(stair, found);
        }
        return found;
    }

    private static void space(Stair stair, List<Objection> found) {
        stair.site().runAvailable().ifPresent(available -> {
            if (stair.spaceTaken().isMoreThan(available.value())) {
                found.add(of(
                        "space",
                        "level space taken, header to first nosing",
                        stair.spaceTaken(),
                        available.value(),
                        "measured",
                        "find more run, or climb in fewer, higher steps where the code lets you"));
            }
        });
    }

    private static void treads(Stair stair, List<Objection> found) {
        if (stair.projection().isNegative()) {
            found.add(of(
                    "tread-covers-run",
                    "width of a tread",
                    stair.brief().treads().width(),
                    stair.run(),
                    GEOMETRY,
                    "use wider tread boards, or a shorter run"));
        }
    }

    private static void wood(Stair stair, List<Objection> found) {
        StringerShape shape = new StringerShape(stair);
        if (!shape.throat().isPositive()) {
            found.add(of(
                    "wood-left",
                    "depth cut out of the stringer",
                    shape.notchDepth(),
                    shape.boardDepth(),
                    GEOMETRY,
                    "use deeper stock for the stringers"));
        }
    }

    private static void ends(Stair stair, List<Objection> found) {
        StringerShape shape = new StringerShape(stair);
        Length underFirstCut = footTakes(stair);
        if (stair.firstCut().isAtMost(underFirstCut)) {
            found.add(of(
                    "first-cut",
                    "height of the first cut",
                    stair.firstCut(),
                    underFirstCut,
                    GEOMETRY,
                    "use thinner treads, a thinner board at the foot, or fewer risers"));
        }
        if (stair.brief().foot() instanceof FootDetail.Kicker kicker
                && shape.heel().x().isAtMost(kicker.depth())) {
            found.add(of(
                    "kicker-fits",
                    "length of the level cut at the foot",
                    shape.heel().x(),
                    kicker.depth(),
                    GEOMETRY,
                    "use a narrower kicker, or deeper stock for the stringers"));
        }
        head(stair, shape, found);
    }

    private static Length footTakes(Stair stair) {
        return stair.brief().foot() instanceof FootDetail.Kicker kicker ? kicker.height() : Length.ZERO;
    }

    private static void head(Stair stair, StringerShape shape, List<Objection> found) {
        if (!shape.contactHeight().isPositive()) {
            found.add(of(
                    "head-meets-header",
                    "plumb contact of the head with the header",
                    shape.contactHeight(),
                    Length.ZERO,
                    GEOMETRY,
                    "add a drop header under it, or bring the top tread flush with the floor"));
        }
        if (stair.brief().headFixing() instanceof HeadFixing.Ledger ledger
                && (ledger.height().isAtLeast(shape.plumbCut())
                        || shape.heel().x().isAtLeast(stair.headerFace().minus(ledger.thickness())))) {
            found.add(of(
                    "ledger-fits",
                    "plumb cut at the head",
                    shape.plumbCut(),
                    ledger.height(),
                    GEOMETRY,
                    "use a lower ledger, or another fixing at the head"));
        }
    }

    private static Objection of(
            String id, String what, Quantity measured, Quantity limit, String citation, String change) {
        return new Objection(id, what, measured, limit, citation, Phrase.of(change));
    }
}
