package pitchboard.railing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchboard.brief.Guard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Infill;
import pitchboard.brief.Posts;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.site.Hand;
import pitchboard.site.Side;
import pitchboard.stair.Stair;

/**
 * The guard of one side, laid out. Every open side has the same one, mirrored.
 *
 * @param height of its top plumb above the line of the nosings
 */
public record GuardLayout(Stair stair, GuardBuild build, Length height) {
    /** Empty when no guard is wanted, it is not said what it is built of, or no side is open. */
    public static Optional<GuardLayout> find(Stair stair) {
        Guard guard = stair.brief().guard();
        if (!guard.wanted() || hands(stair).isEmpty()) {
            return Optional.empty();
        }
        return guard.build()
                .flatMap(build -> guard.height().map(height -> new GuardLayout(stair, build, height)))
                .filter(layout -> layout.clearHeight().isPositive());
    }

    /** The open sides of a flight. */
    public static List<Hand> hands(Stair stair) {
        List<Hand> open = new ArrayList<>();
        if (stair.site().leftSide() == Side.OPEN) {
            open.add(Hand.LEFT);
        }
        if (stair.site().rightSide() == Side.OPEN) {
            open.add(Hand.RIGHT);
        }
        return open;
    }

    public int sides() {
        return hands(stair).size();
    }

    private Pitch pitch() {
        return stair.pitch();
    }

    /** The upper edge of the top rail. */
    public RailLine top() {
        return new RailLine(stair, height);
    }

    /** The lower edge of the top rail. */
    public RailLine topUnderside() {
        return top().lowered(pitch().plumbForDepth(build.topRail().thickness()));
    }

    /** The lower edge of the bottom rail. */
    public RailLine bottomUnderside() {
        return new RailLine(stair, build.bottomRail().aboveNosings());
    }

    /** The upper edge of the bottom rail. */
    public RailLine bottomTop() {
        Length thickness = build.bottomRail().section().thickness();
        return bottomUnderside().lowered(pitch().plumbForDepth(thickness).negated());
    }

    /** Between bottom and top rail, plumb. */
    public Length clearHeight() {
        return topUnderside().above().minus(bottomTop().above());
    }

    public PostPlaces places() {
        return PostPlaces.of(stair, build.posts());
    }

    /** From the foot. */
    public List<Post> posts() {
        List<Integer> steps = places().steps();
        return IntStream.range(0, steps.size())
                .mapToObj(i -> post(i + 1, steps.get(i)))
                .toList();
    }

    private Post post(int number, int step) {
        Length front = places().front(step);
        Length back = front.plus(build.posts().section().width());
        Length foot = Contact.find(stair, build.posts(), front, back)
                .map(Contact::foot)
                .orElseGet(() -> stair.nosing(step).y());
        if (topRailRunsOver()) {
            return new Post(
                    number,
                    step,
                    front,
                    back,
                    foot,
                    topUnderside().at(front),
                    topUnderside().at(back));
        }
        return new Post(number, step, front, back, foot, top().at(back), top().at(back));
    }

    /** Whether the top rail lies on the posts instead of between them. */
    public boolean topRailRunsOver() {
        return build.posts().top() == Posts.Top.UNDER_RAIL;
    }

    /** What a post finds of the outer stringer; empty when it stands on the tread. */
    public Optional<Contact> findContact(Post post) {
        return Contact.find(stair, build.posts(), post.front(), post.back());
    }

    /** From the foot; none when there is a single post. */
    public List<Bay> bays() {
        List<Post> posts = posts();
        return IntStream.range(1, posts.size())
                .mapToObj(i -> new Bay(i, posts.get(i - 1), posts.get(i)))
                .toList();
    }

    /** The pieces of the top rail along the slope: one over all posts, or one for each bay. */
    public List<Length> topRails() {
        if (!topRailRunsOver()) {
            return bottomRails();
        }
        List<Post> posts = posts();
        Length level = posts.get(posts.size() - 1).back().minus(posts.get(0).front());
        return List.of(pitch().alongForLevel(level));
    }

    /** The pieces of the bottom rail along the slope, fitted between the posts with both ends cut plumb. */
    public List<Length> bottomRails() {
        return bays().stream().map(bay -> pitch().alongForLevel(bay.clear())).toList();
    }

    /** What closes every bay, from the foot. */
    public List<Filling> fillings() {
        return bays().stream().map(bay -> filling(bay, Optional.empty())).toList();
    }

    /** What would close a bay with pieces of the same section against another ball; a panel stops them all. */
    public Filling filling(Bay bay, Optional<Length> otherBall) {
        Length slope = pitch().alongForLevel(bay.clear());
        if (build.infill() instanceof Infill.Balusters balusters) {
            Length ball = otherBall.orElse(balusters.ball());
            Spacing spacing = Spacing.of(bay.clear(), balusters.section().width(), ball);
            return new Filling.Balusters(bay, spacing, clearHeight());
        }
        if (build.infill() instanceof Infill.Boards boards) {
            Length ball = otherBall.orElse(boards.ball());
            Length square = pitch().cosTimes(clearHeight());
            return new Filling.Boards(bay, Spacing.of(square, boards.section().width(), ball), slope);
        }
        return new Filling.Panel(bay, clearHeight(), slope);
    }

    /** The widest opening of the infill; empty when there is no bay. */
    public Optional<Length> opening() {
        return fillings().stream().map(Filling::opening).reduce(Length::max);
    }

    public Triangle triangle() {
        return new Triangle(stair, build.bottomRail().aboveNosings());
    }
}
