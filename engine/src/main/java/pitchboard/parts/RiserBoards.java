package pitchboard.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.HeadJoin;
import pitchboard.brief.Risers;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/**
 * The boards that close the steps. They go on before the treads (Griffith, Carpentry, 1916, art. 61), so that each
 * stands on a level cut and the tread in front butts against it.
 */
record RiserBoards(Stair stair, Risers.Boards boards) {
    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        parts.add(bottom());
        between().ifPresent(parts::add);
        (floorIsLastStep() ? top() : backStrip()).ifPresent(parts::add);
        return parts;
    }

    private boolean floorIsLastStep() {
        return stair.brief().headJoin() == HeadJoin.ONE_DOWN;
    }

    private Part bottom() {
        Length fromSurface = stair.levelCut(1).plus(stair.site().lowerFinish());
        return part(
                PartId.BOTTOM_RISER,
                "bottom riser board",
                "closes the first step, from the surface as it is now to the first level cut",
                1,
                fromSurface);
    }

    private Optional<Part> between() {
        int count = stair.flight().risers() - (floorIsLastStep() ? 2 : 1);
        Part alike =
                part(PartId.RISER, "riser board", "closes a step, from level cut to level cut", count, stair.rise());
        return Optional.of(alike).filter(part -> part.count() > 0);
    }

    private Optional<Part> top() {
        Length decking = stair.site().head().decking();
        Part last = part(
                PartId.TOP_RISER,
                "top riser board",
                "closes the last step, from the last level cut to the underside of the decking",
                1,
                stair.rise().plus(stair.treadThickness()).minus(decking));
        return Optional.of(last).filter(part -> part.width().isPositive());
    }

    /** All treads are alike, so a riser board's thickness stays open behind the flush one, less what decking covers. */
    private Optional<Part> backStrip() {
        Length covered = stair.site().head().deckingOverhang().orElse(Length.ZERO);
        Part strip = new Part(
                PartId.BACK_STRIP,
                "back strip",
                "fills the gap between the top tread and the header",
                1,
                boards.thickness().minus(covered),
                stair.treadThickness(),
                stair.brief().width());
        return Optional.of(strip).filter(part -> part.thickness().isPositive());
    }

    private Part part(PartId id, String name, String purpose, int count, Length width) {
        return new Part(
                id,
                name,
                purpose,
                count,
                boards.thickness(),
                width,
                stair.brief().width());
    }
}
