package pitchboard.sheet.work;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Posts;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.parts.PartId;
import pitchboard.railing.Brackets;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Post;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.work.OrderOfWork.Task;
import pitchboard.stair.Stair;

/** The steps of putting up a guard that is laid out, with their check sizes. The order is common practice, no source. */
record RailTasks(Subject subject, GuardLayout guard) {
    /** None when neither a guard is laid out nor a handrail settled. */
    static List<Task> of(Subject subject) {
        List<Task> tasks = new ArrayList<>();
        GuardLayout.find(subject.stair()).ifPresent(guard -> tasks.addAll(new RailTasks(subject, guard).tasks()));
        EdgeLayout.find(subject.stair()).forEach(edge -> tasks.add(edge(subject, edge)));
        subject.findPart(PartId.HANDRAIL).ifPresent(part -> tasks.addAll(handrail(subject)));
        return tasks;
    }

    private static Task edge(Subject subject, EdgeLayout edge) {
        return new Task(
                "Put up the guard along the upper floor's edge, " + edge.hand().words()
                        + ": posts from the marks of its sheet, each from the end of the treads, plumb both ways; then the"
                        + " rails, then the infill.",
                subject.size(edge.height()) + " above the finished floor, level");
    }

    private Stair stair() {
        return subject.stair();
    }

    private List<Task> tasks() {
        List<Task> tasks = new ArrayList<>();
        tasks.add(new Task(
                "Keep a temporary rail on every open side and at the edge above until the guard stands.",
                "nobody works at an open edge without one"));
        tasks.add(new Task(
                "Lay a straight edge on the nosings; mark the front of every post on it from its lower end, and plumb "
                        + "the mark down.",
                "last mark at " + subject.running(lastMark())));
        posts(tasks);
        tasks.add(new Task(
                "Mark the rails on the posts parallel to the straight edge. Cut and fix the bottom rail, then the top rail.",
                subject.size(guard.height()) + " plumb over every nosing, all alike"));
        tasks.add(infill());
        return tasks;
    }

    private Length lastMark() {
        List<Post> posts = guard.posts();
        Graduation graduation = subject.tape().graduation();
        return Marked.of(posts.get(posts.size() - 1).alongStraightEdge(stair()), graduation)
                .line();
    }

    private void posts(List<Task> tasks) {
        Posts posts = guard.build().posts();
        Length overhang = stair().brief().stringers().treadOverhang();
        if (posts.fixing() instanceof Posts.Fixing.Lapped && overhang.isPositive()) {
            tasks.add(new Task(
                    "Notch the ends of the treads round the posts, so that each lies flat against the stringer.",
                    subject.size(overhang) + " in from the end of the tread"));
        }
        if (posts.fixing() instanceof Posts.Fixing.Notched notched) {
            tasks.add(new Task(
                    "Cut the notch of every post over the stringer, saw to the corner and not past it.",
                    subject.size(notched.depth()) + " deep"));
        }
        tasks.add(new Task(
                "Cut the posts from the list. Fix the first and the last by the published or engineered detail, plumb "
                        + "both ways, then those between to a line.",
                "at most " + subject.size(guard.places().widest()) + " from middle to middle"));
    }

    private Task infill() {
        String what = subject.parts().stream()
                .filter(part -> part.id().mark().startsWith(PartId.INFILL.mark()))
                .map(part -> part.name())
                .findFirst()
                .orElse("piece");
        String gap = guard.opening()
                .filter(Length::isPositive)
                .map(opening -> "no gap more than "
                        + subject.size(opening.roundedUp(subject.tape().graduation())))
                .orElse("no gap");
        return new Task("Mark and fix every " + what + " from the marks of its bay, each from the one datum.", gap);
    }

    private static List<Task> handrail(Subject subject) {
        Stair stair = subject.stair();
        List<Task> tasks = new ArrayList<>();
        Brackets.find(stair)
                .ifPresent(brackets -> tasks.add(new Task(
                        "Snap the line of the handrail on the wall. Fix "
                                + brackets.places().size()
                                + " brackets on it, every one into solid framing or blocking.",
                        "at most "
                                + subject.size(brackets.apart()
                                        .roundedUp(subject.tape().graduation())) + " from middle to middle")));
        tasks.add(new Task(
                "Fix the handrail, its ends returned to wall or post.",
                subject.size(stair.brief().handrail().height().orElseThrow()) + " plumb over the nosings"));
        return tasks;
    }
}
