package pitchboard.documents.text;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.Filling;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Spacing;

/** The marks of a guard that is laid out. */
record GuardText(Tape tape, Lines lines) {
    void marks(GuardLayout guard) {
        lines.heading("Fronts of the guard's posts, along a straight edge on the nosings");
        guard.posts()
                .forEach(post -> lines.item(
                        "  " + Lines.right(String.valueOf(post.number()), 3) + "  ",
                        running(post.alongStraightEdge(guard.stair())) + ", on step " + post.step() + ", "
                                + size(post.length()) + " long"));
        if (!guard.bays().isEmpty()) {
            lines.heading("Infill of the guard, bay by bay");
            guard.fillings()
                    .forEach(filling -> lines.item(
                            "  " + Lines.right(String.valueOf(filling.bay().number()), 3) + "  ",
                            words(guard, filling)));
        }
    }

    void edge(EdgeLayout edge) {
        lines.heading("Guard along the upper floor's edge, " + edge.hand().words());
        lines.item(
                "  posts  ",
                edge.fronts().stream().map(this::running).collect(Collectors.joining(", "))
                        + " from the end of the treads, " + size(edge.postLength()) + " long");
        edge.spacing()
                .ifPresent(spacing -> lines.item(
                        "  bays   ",
                        edge.bays() + ", clear " + size(edge.clear()) + ": " + spacing.count() + " pieces, gap "
                                + size(spacing.gap()) + ", at "
                                + IntStream.rangeClosed(1, spacing.count())
                                        .mapToObj(spacing::nearEdge)
                                        .map(this::running)
                                        .collect(Collectors.joining(", "))));
    }

    private String words(GuardLayout guard, Filling filling) {
        String clear = "clear " + size(filling.bay().clear());
        if (filling instanceof Filling.Balusters balusters) {
            return clear + ": " + pieces(guard, balusters.spacing(), "balusters", "along the bottom rail");
        }
        if (filling instanceof Filling.Boards boards) {
            return clear + ": " + pieces(guard, boards.spacing(), "boards", "plumb from the bottom rail");
        }
        return clear + ": one panel";
    }

    private String pieces(GuardLayout guard, Spacing spacing, String what, String along) {
        List<Length> edges = IntStream.rangeClosed(1, spacing.count())
                .mapToObj(piece -> guard.stair().pitch().alongForLevel(spacing.nearEdge(piece)))
                .toList();
        String marks = edges.stream().map(this::running).collect(Collectors.joining(", "));
        return spacing.count() + " " + what + ", gap " + size(spacing.gap())
                + (edges.isEmpty() ? "" : ", " + along + " at " + marks);
    }

    private String size(Length length) {
        return TapeWriter.write(length, tape, Tape.Style.PLAIN);
    }

    private String running(Length exact) {
        Graduation graduation = tape.graduation();
        return TapeWriter.writeRunning(Marked.of(exact, graduation).line(), tape, Tape.Style.PLAIN);
    }
}
