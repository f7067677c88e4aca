package pitchboard.railing;

import java.util.Optional;
import pitchboard.brief.Posts;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/**
 * The wood of the outer stringer that a post finds behind it: below the level cut and above the bottom edge. Where the
 * post stands across a riser cut, only what lies below the lower of the two level cuts counts.
 *
 * @param width level, the part of the post's width that has wood behind it; not positive when none has
 * @param foot height of the lowest full contact
 * @param height plumb, from there up to the level cut; not positive when the post finds no wood
 * @param crossesRiser whether a riser cut lies behind the post
 */
public record Contact(Length width, Length foot, Length height, boolean crossesRiser) {
    /** Two bolts stand this far from the edges of the wood: the arm that timber tables take. */
    private static final Length BOLT_EDGE = Length.inches(2);

    /** Of a post between these faces; empty when it stands on the tread instead. */
    static Optional<Contact> find(Stair stair, Posts posts, Length front, Length back) {
        return posts.fixing() instanceof Posts.Fixing.SetOn ? Optional.empty() : Optional.of(of(stair, front, back));
    }

    private static Contact of(Stair stair, Length front, Length back) {
        StringerShape shape = new StringerShape(stair);
        Length from = Length.max(front, Length.ZERO);
        Length to = Length.min(back, stair.headerFace());
        int step = stepAt(stair, from);
        // A square foot whose back corner is on the bottom edge hangs nowhere below it.
        Length foot = Length.max(shape.bottomEdge(to), stair.seat());
        boolean crosses = to.isMoreThan(stair.riserCut(step + 1));
        return new Contact(to.minus(from), foot, stair.levelCut(step).minus(foot), crosses);
    }

    private static int stepAt(Stair stair, Length x) {
        int step = Math.toIntExact(x.wholeTimes(stair.run()) + 1);
        return Math.max(1, Math.min(step, stair.treads()));
    }

    public boolean isWood() {
        return width.isPositive() && height.isPositive();
    }

    /** Plumb from bolt to bolt when each stands 2 in from the edge of the wood; not positive when two find no room. */
    public Length boltArm() {
        return height.minus(BOLT_EDGE.times(2));
    }
}
