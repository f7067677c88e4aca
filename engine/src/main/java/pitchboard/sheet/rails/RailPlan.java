package pitchboard.sheet.rails;

import java.util.List;
import pitchboard.brief.Posts;
import pitchboard.measure.Length;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Post;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.site.Side;
import pitchboard.stair.Stair;

/** Draws posts and top rail of a guard from above; y counts from the right-hand end of the treads. */
public record RailPlan(Draft draft, View view, GuardLayout guard) {
    public static void draw(Draft draft, View view, Stair stair) {
        GuardLayout.find(stair).ifPresent(guard -> new RailPlan(draft, view, guard).draw());
    }

    private Stair stair() {
        return guard.stair();
    }

    private void draw() {
        Length outer = outerFace();
        Length thickness = guard.build().posts().section().thickness();
        if (stair().site().rightSide() == Side.OPEN) {
            side(outer, outer.plus(thickness));
        }
        if (stair().site().leftSide() == Side.OPEN) {
            Length width = stair().brief().width();
            side(width.minus(outer).minus(thickness), width.minus(outer));
        }
    }

    /** Of the posts on the right-hand side: below zero where they stand outside the treads. */
    private Length outerFace() {
        Posts posts = guard.build().posts();
        if (posts.fixing() instanceof Posts.Fixing.SetOn) {
            return Length.ZERO;
        }
        Length lapped = stair().brief()
                .stringers()
                .treadOverhang()
                .minus(posts.section().thickness());
        return posts.fixing() instanceof Posts.Fixing.Notched notched ? lapped.plus(notched.depth()) : lapped;
    }

    private void side(Length low, Length high) {
        List<Post> posts = guard.posts();
        Length middle = low.plus(high).dividedBy(2);
        Length half = guard.build().topRail().width().dividedBy(2);
        draft.pencil(SidePicture.ref(PartId.TOP_RAIL))
                .outline(
                        Pen.GHOST,
                        view.at(SideView.rectangle(
                                posts.get(0).front(),
                                middle.minus(half),
                                posts.get(posts.size() - 1).back(),
                                middle.plus(half))));
        posts.forEach(post -> draft.pencil(SidePicture.ref(PartId.POST))
                .outline(Pen.OUTLINE, Fill.SHADE, view.at(SideView.rectangle(post.front(), low, post.back(), high))));
    }
}
