package pitchboard.sheet.papers;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.parts.PartId;
import pitchboard.plane.Point;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Notes;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.Subject;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** The names of the pieces on the elevation, each led to what it names. */
record ElevationNotes(Subject subject, View view, Pencil pencil) {
    private Stair stair() {
        return subject.stair();
    }

    void draw() {
        Notes notes = new Notes(pencil, 52);
        boolean supported = subject.side().supportPost().isPresent();
        Spot edge = view.at(bottomEdgeAt(supported ? Ratio.of(4, 5) : Ratio.of(11, 20)));
        notes.onEdge(
                edge,
                corner(edge, 14, 12),
                "**S** " + stair().brief().stringers().count() + " stringers, "
                        + stair().brief().stringers().stock().name());
        subject.side().supportPost().ifPresent(post -> {
            Length middle = post.least(Point::y).plus(post.greatest(Point::y)).dividedBy(2);
            Spot side = view.at(Point.of(post.greatest(Point::x), middle));
            notes.onEdge(side, corner(side, 10, 6), supportWords());
        });
        subject.side().headBoard().ifPresent(board -> {
            Spot low = view.at(Point.of(stair().headerFace(), board.least(Point::y)))
                    .shifted(-0.5, -0.5);
            notes.onArea(low, corner(low, 4, 15), "**H** " + name(PartId.HEAD_BOARD));
        });
        subject.side().footBoard().ifPresent(board -> {
            Spot end = view.at(Point.of(board.greatest(Point::x), board.least(Point::y)))
                    .shifted(-0.8, -0.6);
            notes.onArea(end, corner(end, 20, -9), "**F** " + name(PartId.FOOT_BOARD));
        });
    }

    /** Short, so that it ends before the line of the header; the order of work says what the distance counts from. */
    private String supportWords() {
        Length at = stair().brief().support().orElseThrow().at();
        return "**SP** " + stair().brief().stringers().count() + " posts at " + subject.size(at);
    }

    private String name(PartId id) {
        return subject.findPart(id).orElseThrow().name();
    }

    private static List<Spot> corner(Spot from, double right, double down) {
        return List.of(
                from.shifted(right, down),
                from.shifted(right * 1.4, down * 1.4),
                from.shifted(right * 1.8, down * 0.7));
    }

    private Point bottomEdgeAt(Ratio share) {
        Length x = stair().headerFace().times(share);
        StringerShape shape = new StringerShape(stair());
        return Point.of(x, Length.max(shape.bottomEdge(x), stair().seat()));
    }
}
