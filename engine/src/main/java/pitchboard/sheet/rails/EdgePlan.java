package pitchboard.sheet.rails;

import java.util.stream.Stream;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.plane.Outline;
import pitchboard.railing.EdgeLayout;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.site.Hand;
import pitchboard.stair.Stair;

/**
 * Draws the guard along the upper floor's edge from above; y counts from the right-hand end of the treads. An edge much
 * longer than the flight is wide would only make the flight small: of it the first posts are drawn.
 */
public record EdgePlan(EdgeLayout edge) {
    private static final Length SHOWN = Length.inches(66);

    public static void draw(Draft draft, View view, Stair stair) {
        EdgeLayout.find(stair).forEach(edge -> new EdgePlan(edge).draw(draft, view));
    }

    /** How far beside the treads the guard is drawn; zero where none is laid out. */
    public static Length reach(Stair stair, Hand hand) {
        return EdgeLayout.find(stair).stream()
                .filter(edge -> edge.hand() == hand)
                .map(edge -> new EdgePlan(edge).shown())
                .findFirst()
                .orElse(Length.ZERO);
    }

    private Length shown() {
        return Length.min(edge.length(), SHOWN);
    }

    private void draw(Draft draft, View view) {
        Length thickness = edge.build().posts().section().thickness();
        Length width = edge.build().posts().section().width();
        Length half = edge.build().topRail().width().dividedBy(2);
        Length middle = edge.frontFace().plus(thickness.dividedBy(2));
        draft.pencil(SidePicture.ref(PartId.EDGE_TOP_RAIL))
                .outline(Pen.GHOST, view.at(across(Length.ZERO, shown(), middle.minus(half), middle.plus(half))));
        posts().forEach(front -> draft.pencil(SidePicture.ref(PartId.EDGE_POST))
                .outline(
                        Pen.OUTLINE,
                        Fill.SHADE,
                        view.at(across(
                                front,
                                front.plus(width),
                                edge.frontFace(),
                                edge.frontFace().plus(thickness)))));
    }

    private Stream<Length> posts() {
        Length width = edge.build().posts().section().width();
        return edge.fronts().stream().filter(front -> front.plus(width).isAtMost(shown()));
    }

    /** From and to along the edge, counted from the end of the treads on its side. */
    private Outline across(Length from, Length to, Length front, Length back) {
        Length end = edge.stair().brief().width();
        return edge.hand() == Hand.LEFT
                ? SideView.rectangle(front, end.plus(from), back, end.plus(to))
                : SideView.rectangle(front, to.negated(), back, from.negated());
    }
}
