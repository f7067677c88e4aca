package pitchboard.sheet.rails;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.plane.Point;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Post;
import pitchboard.sheet.Box;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Station;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.RailPicture;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** The guard from the side: its posts, rails and infill on the stair, and its height over the nosings. */
public final class RailSheet {
    private static final double WORDS = 70;
    private static final double DIMENSIONS = 22;

    private final Subject subject;
    private final Stair stair;
    private final GuardLayout guard;
    private final Draft draft;
    private final Pencil pencil;
    private final View view;

    private RailSheet(Subject subject, GuardLayout guard, Frame frame) {
        this.subject = subject;
        this.stair = subject.stair();
        this.guard = guard;
        this.draft = frame.draft("rails", "Guard and rails");
        this.pencil = draft.pencil();
        Box clear = draft.room()
                .withoutLeft(WORDS + DIMENSIONS)
                .withoutRight(DIMENSIONS)
                .withoutBottom(DIMENSIONS)
                .withoutTop(4);
        this.view = View.fitting(clear, extent(), Scale.of(subject.tape()));
    }

    /** Empty when no guard is laid out. */
    public static List<Draft> of(Subject subject, Frame frame) {
        return GuardLayout.find(subject.stair())
                .map(guard -> {
                    RailSheet sheet = new RailSheet(subject, guard, frame);
                    sheet.draw();
                    return List.of(sheet.draft.scaled(sheet.view.scale()));
                })
                .orElse(List.of());
    }

    private List<Point> extent() {
        List<Point> points = new ArrayList<>(SidePicture.extent(stair));
        points.addAll(RailPicture.extent(guard));
        points.addAll(RailPicture.handrailExtent(stair));
        return points;
    }

    private void draw() {
        new SidePicture(draft, view, stair).draw();
        RailPicture picture = new RailPicture(draft, view, guard);
        picture.draw();
        picture.handrail();
        nosingLine();
        heights();
        spacings();
        words();
    }

    private Dimensions dimensions() {
        return new Dimensions(pencil, subject::size);
    }

    private void nosingLine() {
        pencil.line(Pen.CENTRE, view.at(stair.nosing(1)), view.at(stair.nosing(stair.treads())));
    }

    /** Over the lowest and the highest nosing: all between are the same. */
    private void heights() {
        Point low = stair.nosing(1);
        height(low, view.around(extent()).left() - 9);
        if (stair.treads() > 1) {
            height(stair.nosing(stair.treads()), view.around(extent()).right() + 9);
        }
    }

    private void height(Point nosing, double x) {
        Point top = guard.top().pointAt(nosing.x());
        Station below = Station.of(
                nosing.y(), Spot.of(view.at(nosing).x(), view.at(nosing).y()));
        Station above =
                Station.of(top.y(), Spot.of(view.at(top).x(), view.at(top).y()));
        dimensions().plumb(x, below, above);
    }

    /** From the middle of each post to the middle of the next, level. */
    private void spacings() {
        List<Post> posts = guard.posts();
        if (posts.size() < 2) {
            return;
        }
        double bottom = view.around(extent()).bottom();
        List<Station> stations = posts.stream()
                .map(post -> Station.of(
                        post.middle(),
                        Spot.of(view.at(post.middle(), Length.ZERO).x(), bottom)))
                .toList();
        dimensions().levelWithOverall(bottom + 8, stations);
    }

    private void words() {
        RailWords words = new RailWords(subject, guard);
        List<String> paragraphs = new ArrayList<>(List.of(
                "**" + guard.posts().size() + " posts** on each open side, at most "
                        + subject.size(guard.places().widest()) + " from middle to middle.",
                words.heights(),
                words.openings(),
                words.falls(),
                words.cuts(),
                "**GP** posts, **GT** top rail, **GB** bottom rail, **GI** infill"
                        + (subject.findPart(PartId.HANDRAIL).isPresent() ? ", **HR** handrail (dashed)" : "")
                        + ": see the pieces sheet."));
        if (guard.sides() > 1) {
            paragraphs.add("The other side is the same, mirrored.");
        }
        paragraphs.add("How guard posts are connected needs a published or engineered detail.");
        String text = String.join("\n\n", paragraphs);
        Spot top = draft.room().topLeft().shifted(0, 3);
        pencil.paragraph(top, WORDS, text, Lettering.NOTE);
    }
}
