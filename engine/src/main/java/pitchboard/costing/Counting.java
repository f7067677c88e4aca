package pitchboard.costing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.Decimals;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.parts.Part;
import pitchboard.parts.PartId;
import pitchboard.stair.Stair;

/** Counts what a stair takes of screws, bolts, adhesive and finish, and what there is to do. */
final class Counting {
    private final Stair stair;
    private final List<Part> parts;

    Counting(Stair stair, List<Part> parts) {
        this.stair = stair;
        this.parts = parts;
    }

    /** Pieces whose mark begins so, numbers left out. */
    private int count(String mark) {
        return parts.stream()
                .filter(part -> part.id().mark().replaceAll("[0-9]", "").equals(mark))
                .mapToInt(Part::count)
                .sum();
    }

    private int risers() {
        return count("R") + count("RB") + count("RT");
    }

    /** Of the guard on the flight and of that along the upper floor's edge. */
    private int posts() {
        return count("GP") + count("LP");
    }

    private int stringers() {
        return stair.brief().stringers().count();
    }

    List<Takeoff> takeoffs() {
        List<Takeoff> all = new ArrayList<>();
        int boards = stair.treads() * stair.brief().treads().boards();
        add(
                all,
                Sundry.TREAD_SCREWS,
                2L * boards * stringers(),
                boards + " tread boards x " + stringers() + " stringers x 2 (2 a crossing, from memory)");
        add(
                all,
                Sundry.RISER_SCREWS,
                2L * risers() * stringers(),
                risers() + " riser boards x " + stringers() + " stringers x 2 (2 a crossing, from memory)");
        add(all, Sundry.POST_BOLTS, 2L * posts(), posts() + " posts x 2 (2 a post, from memory)");
        if (stair.brief().headFixing() instanceof HeadFixing.MetalHanger) {
            add(all, Sundry.HANGERS, stringers(), "one for each stringer");
        }
        all.add(bead());
        return all;
    }

    private static void add(List<Takeoff> all, Sundry kind, long amount, String rule) {
        if (amount > 0) {
            all.add(new Takeoff(kind, Ratio.of(amount), rule));
        }
    }

    /** A bead along every level cut: as long as a tread is wide. */
    private Takeoff bead() {
        Length each = stair.brief().treads().width();
        Ratio feet = each.over(Length.feet(1)).times((long) stair.treads() * stringers());
        return new Takeoff(
                Sundry.ADHESIVE,
                feet,
                stair.treads() + " treads x " + stringers()
                        + " stringers, a 1/4 in bead as long as the tread is wide (common practice, no source)");
    }

    /** All long faces of every piece, once for each coat; ends are left out. */
    Optional<Takeoff> finish(int coats) {
        if (coats == 0) {
            return Optional.empty();
        }
        Ratio feet = Ratio.ZERO;
        for (Part part : parts) {
            if (!part.id().equals(PartId.PITCH_BOARD)) {
                feet = feet.plus(squareFeet(part).times((long) part.count()));
            }
        }
        String rule = "twice thickness and width x length of every piece = " + Decimals.trimmed(feet, 1)
                + " square feet, x " + coats + (coats == 1 ? " coat" : " coats")
                + " (all four faces, stringers as whole boards; common practice, no source)";
        return Optional.of(new Takeoff(Sundry.FINISH, feet.times((long) coats), rule));
    }

    /** Of the four long faces of one, its sizes rounded up to a line of the tape. */
    private Ratio squareFeet(Part part) {
        Graduation graduation = stair.brief().tape().graduation();
        Length around = part.thickness().plus(part.width()).times(2).roundedUp(graduation);
        Length foot = Length.feet(1);
        return around.over(foot).times(part.length().roundedUp(graduation).over(foot));
    }

    List<Work> work() {
        List<Work> all = new ArrayList<>();
        add(all, Task.FIRST_STRINGER, Ratio.ONE);
        add(all, Task.FURTHER_STRINGER, Ratio.of(stringers() - 1L));
        add(all, Task.HANGING, Ratio.of(stringers()));
        add(all, Task.TREAD, Ratio.of(stair.treads()));
        add(all, Task.RISER, Ratio.of(risers()));
        add(all, Task.POST, Ratio.of(posts()));
        add(all, Task.RAIL_FOOT, feet("GT").plus(feet("LT")));
        add(all, Task.HANDRAIL_FOOT, feet("HR"));
        return all;
    }

    private static void add(List<Work> all, Task task, Ratio times) {
        if (times.signum() > 0) {
            all.add(new Work(task, times));
        }
    }

    /** Of all pieces whose mark begins so, rounded up to whole feet for each kind of piece. */
    private Ratio feet(String mark) {
        long feet = 0;
        for (Part part : parts) {
            if (part.id().mark().replaceAll("[0-9]", "").equals(mark)) {
                Length all = part.length().times(part.count());
                feet -= all.negated().wholeTimes(Length.feet(1));
            }
        }
        return Ratio.of(feet);
    }
}
