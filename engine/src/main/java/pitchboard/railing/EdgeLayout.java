package pitchboard.railing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pitchboard.brief.EdgeGuard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Infill;
import pitchboard.brief.Posts;
import pitchboard.measure.Length;
import pitchboard.site.Hand;
import pitchboard.stair.Stair;

/**
 * The guard along the open edge of the upper floor on one side of the flight, laid out on the level. Places are counted
 * along the edge from the end of the treads, heights from the finished floor. Its bays are all alike.
 *
 * @param length of the edge from the outer face of the first post to that of the last
 * @param railAboveFloor from the finished floor up to the underside of the bottom rail
 */
public record EdgeLayout(
        Stair stair, GuardBuild build, Hand hand, Length length, Length height, Length railAboveFloor, Infill infill) {

    /** One for each side where the edge is open; none when no guard is wanted there or it is not said what it is built of. */
    public static List<EdgeLayout> find(Stair stair) {
        return Stream.of(Hand.values())
                .flatMap(hand -> find(stair, hand).stream())
                .toList();
    }

    private static Optional<EdgeLayout> find(Stair stair, Hand hand) {
        Length length = stair.site().edgeAbove().map(edge -> edge.on(hand)).orElse(Length.ZERO);
        return stair.brief()
                .guard()
                .build()
                .filter(build -> stair.brief().guard().wanted() && length.isPositive())
                .flatMap(build -> stair.brief().guard().edge().flatMap(edge -> of(stair, build, edge, hand, length)))
                .filter(layout -> layout.clearHeight().isPositive() && layout.length.isAtLeast(layout.postWidth()));
    }

    private static Optional<EdgeLayout> of(Stair stair, GuardBuild build, EdgeGuard edge, Hand hand, Length length) {
        return edge.railAboveFloor()
                .map(rail -> new EdgeLayout(
                        stair, build, hand, length, edge.height(), rail, infill(build.infill(), edge.ball())));
    }

    private static Infill infill(Infill infill, Optional<Length> ball) {
        if (infill instanceof Infill.Balusters balusters) {
            return new Infill.Balusters(balusters.section(), ball.orElse(balusters.ball()));
        }
        return infill instanceof Infill.Boards boards
                ? new Infill.Boards(boards.section(), ball.orElse(boards.ball()))
                : infill;
    }

    private Length postWidth() {
        return build.posts().section().width();
    }

    /** As few as keep the greatest spacing; none where the edge is too short for two posts. */
    public int bays() {
        Length between = length.minus(postWidth());
        if (between.isAtMost(postWidth())) {
            return 0;
        }
        int fewest = between.over(build.posts().greatestSpacing())
                .negated()
                .floor()
                .negate()
                .intValueExact();
        int most = Math.toIntExact(between.wholeTimes(postWidth()));
        boolean touching = postWidth().times(most).equals(between);
        return Math.max(1, Math.min(fewest, touching ? most - 1 : most));
    }

    public int posts() {
        return bays() + 1;
    }

    /** From the middle of one post to the middle of the next; zero for a single post. */
    public Length apart() {
        return bays() == 0 ? Length.ZERO : length.minus(postWidth()).dividedBy(bays());
    }

    /** The near face of every post. */
    public List<Length> fronts() {
        return IntStream.range(0, posts()).mapToObj(post -> apart().times(post)).toList();
    }

    /** Clear from post to post; zero for a single post. */
    public Length clear() {
        return bays() == 0 ? Length.ZERO : apart().minus(postWidth());
    }

    /** Whether the top rail lies on the posts instead of between them. */
    public boolean topRailRunsOver() {
        return build.posts().top() == Posts.Top.UNDER_RAIL;
    }

    public Length topUnderside() {
        return height.minus(build.topRail().thickness());
    }

    public Length bottomTop() {
        return railAboveFloor.plus(build.bottomRail().section().thickness());
    }

    /** Between bottom and top rail. */
    public Length clearHeight() {
        return topUnderside().minus(bottomTop());
    }

    public Length postTop() {
        return topRailRunsOver() ? topUnderside() : height;
    }

    /** Below the floor: the underside of the header, or zero where the posts stand on the floor. */
    public Length postFoot() {
        return build.posts().fixing() instanceof Posts.Fixing.SetOn
                ? Length.ZERO
                : stair.site()
                        .head()
                        .decking()
                        .plus(stair.site().head().depth())
                        .negated();
    }

    public Length postLength() {
        return postTop().minus(postFoot());
    }

    /** The pieces of the top rail: one over all posts, or one for each bay. */
    public List<Length> topRails() {
        return topRailRunsOver() ? List.of(length) : bottomRails();
    }

    /** The pieces of the bottom rail, fitted between the posts. */
    public List<Length> bottomRails() {
        return IntStream.range(0, bays()).mapToObj(bay -> clear()).toList();
    }

    /** How every bay is filled: balusters in its clear length, boards in its clear height; empty for panels or no bay. */
    public Optional<Spacing> spacing() {
        return spacing(Optional.empty());
    }

    /** The same pieces against another ball. */
    public Optional<Spacing> spacing(Optional<Length> otherBall) {
        if (bays() == 0) {
            return Optional.empty();
        }
        if (infill instanceof Infill.Balusters balusters) {
            return Optional.of(Spacing.of(clear(), balusters.section().width(), otherBall.orElse(balusters.ball())));
        }
        return infill instanceof Infill.Boards boards
                ? Optional.of(Spacing.of(clearHeight(), boards.section().width(), otherBall.orElse(boards.ball())))
                : Optional.empty();
    }

    /**
     * Level from the last post of the flight's guard to the first of this one, which stand in one line; empty when no
     * guard runs up that side. Not positive when the two are in each other's way.
     */
    public Optional<Length> gapToFlight() {
        return GuardLayout.find(stair)
                .filter(guard -> GuardLayout.hands(stair).contains(hand))
                .map(guard -> {
                    List<Post> posts = guard.posts();
                    return frontFace().minus(posts.get(posts.size() - 1).back());
                });
    }

    /** Where the posts' faces toward the foot are, along the flight. */
    public Length frontFace() {
        Length thickness = build.posts().section().thickness();
        if (build.posts().fixing() instanceof Posts.Fixing.Notched notched) {
            return stair.headerFace().minus(thickness).plus(notched.depth());
        }
        return build.posts().fixing() instanceof Posts.Fixing.SetOn
                ? stair.headerFace()
                : stair.headerFace().minus(thickness);
    }

    /** The widest opening: in a bay, under the bottom rail, or to the flight's guard. */
    public Length opening() {
        Length gap = spacing().map(Spacing::gap).orElse(Length.ZERO);
        Length inside = Length.max(gap, railAboveFloor);
        return gapToFlight().map(beside -> Length.max(inside, beside)).orElse(inside);
    }
}
