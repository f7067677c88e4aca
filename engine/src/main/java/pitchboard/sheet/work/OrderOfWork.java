package pitchboard.sheet.work;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.Risers;
import pitchboard.brief.Support;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.RunningMark;
import pitchboard.parts.Squareness;
import pitchboard.parts.StringerSpacing;
import pitchboard.sheet.subject.Subject;
import pitchboard.site.Certainty;
import pitchboard.site.Rise;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** The stages of the job with their check sizes. The order is common practice, no source. */
record OrderOfWork(Subject subject) {
    /** Tasks that end with the same thing standing. */
    record Stage(String name, List<Task> tasks) {
        Stage {
            tasks = List.copyOf(tasks);
        }
    }

    /**
     * One thing to do.
     *
     * @param check what to measure before the next; may be empty
     */
    record Task(String todo, String check) {}

    List<Stage> stages() {
        return List.of(
                        new Stage("Before the first cut", before()),
                        new Stage("Mark and cut the first stringer", firstStringer()),
                        new Stage("Cut the others", others()),
                        new Stage("Hang them", hang()),
                        new Stage("Close up", close()),
                        new Stage("Guards and rails", RailTasks.of(subject)),
                        new Stage("Hand over", handOver()))
                .stream()
                .filter(stage -> !stage.tasks().isEmpty())
                .toList();
    }

    private Stair stair() {
        return subject.stair();
    }

    private String size(Length length) {
        return subject.size(length);
    }

    private List<Task> before() {
        List<Task> tasks = new ArrayList<>();
        String measured = stair().site().rise() instanceof Rise.FromLevelLine
                ? "Hold the level line again and read it where the foot will land."
                : "Measure the total rise again, plumb, where the foot will land, at both sides of the stair.";
        tasks.add(new Task(
                measured,
                "finished to finished " + size(stair().flight().totalRise())
                        + "; if it is not, stop and work the stair out anew"));
        if (stair().site().rise().certainty() != Certainty.MEASURED) {
            tasks.add(new Task("The rise was not measured for sure.", "cut nothing until it is"));
        }
        tasks.add(new Task(
                "Read the rules sheet with the local official; see to everything it cannot tell.", "nothing fails"));
        tasks.add(new Task("Print the true-size sheets and measure their ruler.", "100 mm and 4 in"));
        return tasks;
    }

    private List<Task> firstStringer() {
        List<Task> tasks = new ArrayList<>();
        tasks.add(new Task(
                "Choose the straightest board, crown up, no large knot near a corner or the lower edge. "
                        + "Square the datum across it at the foot end.",
                "board at least " + size(subject.layout().boardNeeded())));
        tasks.add(new Task(
                "Mark every corner on the edge from the datum, each from the list, never one step after another.",
                "last mark at " + subject.running(lastMark())));
        tasks.add(new Task(
                "Lay the pitch board on every pair of marks; draw rise and run. Draw foot and head from their sheets.",
                "first cut " + size(stair().firstCut()) + " from seat to level cut"));
        tasks.add(new Task(
                "Saw to the corners, not past them; finish each corner by hand.",
                "throat " + size(new StringerShape(stair()).throat())));
        tasks.add(new Task(
                "Hold it in place before cutting another.",
                "every level cut level, the foot bearing on its whole length"));
        return tasks;
    }

    private Length lastMark() {
        List<RunningMark> marks = subject.layout().marks();
        return marks.get(marks.size() - 1).at().line();
    }

    private List<Task> others() {
        int count = stair().brief().stringers().count();
        return List.of(new Task(
                "Draw the other " + (count - 1) + " from the first, always from the first. Cut them.",
                "stacked together, no corner out by more than "
                        + size(subject.tape().graduation().step())));
    }

    private List<Task> hang() {
        List<Task> tasks = new ArrayList<>();
        tasks.add(head());
        tasks.add(foot());
        stair().brief().support().ifPresent(post -> tasks.add(support(post)));
        StringerSpacing spacing = StringerSpacing.of(stair().brief());
        tasks.add(new Task(
                "Set the stringers plumb and at their places.",
                size(spacing.spacing()) + " from middle to middle, " + size(spacing.overall())
                        + " outside to outside"));
        if (stair().treads() > 1) {
            tasks.add(new Task(
                    "Measure both diagonals, first corner on one side to last corner on the other.",
                    "both " + size(Squareness.diagonal(stair()))));
        }
        tasks.add(new Task("Lay a straight edge and a level across the level cuts, foot and head.", "level across"));
        tasks.add(new Task(
                "Measure from the surface at the foot to the first level cut, before any tread is on.",
                size(stair().levelCut(1)) + " above the finished surface"));
        return tasks;
    }

    private Task head() {
        Length below = stair().flight()
                .totalRise()
                .minus(new StringerShape(stair()).headTop().y());
        String place = "last level cut " + size(below) + " below the finished floor";
        HeadFixing fixing = stair().brief().headFixing();
        if (fixing instanceof HeadFixing.HangerBoard) {
            return new Task("Fix the hanger board to the backs of the heads, then to the header, level.", place);
        }
        if (fixing instanceof HeadFixing.Ledger) {
            return new Task("Fix the ledger to the header, level. Set the heads on it and fix them.", place);
        }
        if (fixing instanceof HeadFixing.MetalHanger) {
            return new Task("Fix a hanger for each stringer to the header, as its maker says.", place);
        }
        return new Task("Bolt each head to the header or its blocking.", place);
    }

    private Task support(Support post) {
        return new Task(
                "Stand a post plumb under every stringer, on its footing, and fix it at top and bottom so that it cannot be"
                        + " kicked out.",
                size(post.at()) + " level from the first riser cut to its middle, the stringers straight over it");
    }

    private Task foot() {
        FootDetail foot = stair().brief().foot();
        String name =
                subject.findPart(PartId.FOOT_BOARD).map(part -> part.name()).orElse("");
        if (foot instanceof FootDetail.OnSurface) {
            return new Task("Anchor each foot to the surface.", "the foot bears on its whole length");
        }
        return new Task("Bed and fix the " + name + ", level. Set the feet and fix them.", "level both ways");
    }

    private List<Task> close() {
        List<Task> tasks = new ArrayList<>();
        if (stair().brief().risers() instanceof Risers.Boards) {
            tasks.add(new Task("Fix the riser boards first, then the treads.", ""));
        }
        tasks.add(new Task(
                "Fix the treads from the foot up, screws or nails as the plan or the code asks, nosings in one line.",
                "nosing projection " + size(stair().projection())));
        tasks.add(new Task(
                "Measure every rise, tread top to tread top, and write it down.",
                "each " + size(stair().rise()) + ", largest less smallest inside the limit of the code"));
        return tasks;
    }

    private List<Task> handOver() {
        return List.of(
                new Task(
                        "Guards and handrails before anybody uses the stair.",
                        "heights and gaps as on the rules sheet"),
                new Task("Call the inspector; keep these sheets with the job.", ""));
    }
}
