package pitchboard.sheet.rails;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.parts.PartId;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.Spacing;
import pitchboard.sheet.Box;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.subject.MarkTable;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.type.Lettering;

/** Two tables side by side: the posts along the edge, and the infill of one bay. */
final class EdgeMarks {
    /** Which row of each table comes next. */
    record Next(int post, int piece) {
        static final Next FIRST = new Next(0, 0);
    }

    private static final double GUTTER = 4;

    private final Subject subject;
    private final EdgeLayout edge;
    private final Table posts;
    private final Optional<Table> pieces;

    EdgeMarks(Subject subject, EdgeLayout edge) {
        this.subject = subject;
        this.edge = edge;
        this.posts = posts();
        this.pieces = edge.spacing().map(this::pieces);
    }

    Next draw(Draft draft, Box room, Next from) {
        int post = from.post < posts.rowCount()
                ? posts.draw(draft, left(room), from.post).next()
                : from.post;
        int piece = pieces.filter(table -> from.piece < table.rowCount())
                .map(table -> table.draw(draft, right(room), from.piece).next())
                .orElse(from.piece);
        return new Next(post, piece);
    }

    private static Box left(Box room) {
        return room.withoutRight(room.width() / 2 + GUTTER);
    }

    private static Box right(Box room) {
        return room.withoutLeft(room.width() / 2 + GUTTER);
    }

    boolean isDone(Next next) {
        return next.post >= posts.rowCount()
                && pieces.filter(table -> next.piece < table.rowCount()).isEmpty();
    }

    private static Table table(String what) {
        return Table.of(
                        Column.checkBox(what, 26),
                        Column.right("mark", 34).bold(),
                        Column.right("off by", 20).small(),
                        Column.rest(""))
                .lettered(Lettering.ofCapitals(2.4));
    }

    private Table posts() {
        Table table = table("post");
        table.heading("Near face of every post along the edge, from the end of the treads");
        rows(table, PartId.EDGE_POST, edge.fronts());
        return table;
    }

    private Table pieces(Spacing spacing) {
        boolean balusters = EdgeSheet.isBalusters(edge);
        Table table = table("piece");
        table.heading("Every bay: " + spacing.count() + (balusters ? " balusters" : " boards") + ", gap "
                + subject.near(spacing.gap()));
        table.heading(
                balusters
                        ? "Near edge along the bottom rail, from the far face of the post before it"
                        : "Lower edge up the post, from the top of the bottom rail");
        rows(
                table,
                PartId.EDGE_INFILL,
                IntStream.rangeClosed(1, spacing.count())
                        .mapToObj(spacing::nearEdge)
                        .toList());
        return table;
    }

    private void rows(Table table, PartId id, List<Length> places) {
        Graduation graduation = subject.tape().graduation();
        for (int i = 0; i < places.size(); i++) {
            Marked mark = Marked.of(places.get(i), graduation);
            table.row(
                    SidePicture.ref(id),
                    List.of(String.valueOf(i + 1), subject.running(mark.line()), MarkTable.offBy(subject, mark), ""));
        }
    }
}
