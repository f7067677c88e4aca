package pitchboard.sheet.subject;

import java.util.List;
import java.util.stream.Stream;
import pitchboard.parts.PartId;
import pitchboard.parts.RailView;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.HandrailRun;
import pitchboard.railing.Post;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.View;
import pitchboard.stair.Stair;

/** Draws a guard that is laid out from the side, over a stair that is drawn already. */
public final class RailPicture {
    private final Draft draft;
    private final View view;
    private final GuardLayout guard;
    private final RailView rails;

    public RailPicture(Draft draft, View view, GuardLayout guard) {
        this.draft = draft;
        this.view = view;
        this.guard = guard;
        this.rails = new RailView(guard);
    }

    /** What guard and handrail cover. */
    public static List<Point> extent(GuardLayout guard) {
        List<Post> posts = guard.posts();
        Post first = posts.get(0);
        Post last = posts.get(posts.size() - 1);
        return List.of(
                Point.of(first.front(), first.frontTop()),
                Point.of(first.front(), first.foot()),
                Point.of(last.back(), last.backTop()));
    }

    /** The same; nothing where no guard is laid out. */
    public static List<Point> extent(Stair stair) {
        return GuardLayout.find(stair).map(RailPicture::extent).orElse(List.of());
    }

    /** Posts and rails in thin lines, on a sheet about something else; not at all where they would leave it. */
    public static void faint(Draft draft, View view, Stair stair) {
        GuardLayout.find(stair)
                .filter(guard -> extent(guard).stream().map(view::at).allMatch(draft.room()::contains))
                .ifPresent(guard -> new RailPicture(draft, view, guard).faint());
    }

    private void faint() {
        Stream.of(rails.posts(), rails.topRails(), rails.bottomRails())
                .flatMap(List::stream)
                .forEach(piece -> draft.pencil().outline(Pen.THIN, view.at(piece)));
    }

    public void draw() {
        infill();
        rails();
        posts();
    }

    public void infill() {
        outlines(PartId.INFILL, Pen.THIN, rails.infill());
    }

    public void rails() {
        outlines(PartId.BOTTOM_RAIL, Pen.THIN, rails.bottomRails());
        if (!guard.topRailRunsOver()) {
            outlines(PartId.TOP_RAIL, Pen.THIN, rails.topRails());
        }
    }

    /** Then the top rail, where it lies on them. */
    public void posts() {
        outlines(PartId.POST, Pen.OUTLINE, rails.posts());
        if (guard.topRailRunsOver()) {
            outlines(PartId.TOP_RAIL, Pen.THIN, rails.topRails());
        }
    }

    /** The handrail before the guard, where it is settled. */
    public void handrail() {
        RailView.handrail(guard.stair())
                .ifPresent(
                        rail -> draft.pencil(SidePicture.ref(PartId.HANDRAIL)).outline(Pen.HIDDEN, view.at(rail)));
    }

    /** What the handrail covers; nothing where none is settled. */
    public static List<Point> handrailExtent(Stair stair) {
        return HandrailRun.find(stair).map(HandrailRun::line).orElse(List.of());
    }

    private void outlines(PartId id, Pen pen, List<Outline> outlines) {
        outlines.stream()
                .filter(outline -> outline.greatest(Point::x).isMoreThan(outline.least(Point::x)))
                .forEach(outline -> draft.pencil(SidePicture.ref(id)).outline(pen, Fill.WHITE, view.at(outline)));
    }
}
