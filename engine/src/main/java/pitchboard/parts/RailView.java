package pitchboard.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pitchboard.measure.Length;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.railing.Bay;
import pitchboard.railing.Filling;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.HandrailRun;
import pitchboard.railing.Post;
import pitchboard.railing.RailLine;
import pitchboard.stair.Stair;

/** Every piece of a guard that is laid out as it is seen from the side, in the site frame. */
public record RailView(GuardLayout guard) {
    public List<Outline> posts() {
        return guard.posts().stream().map(RailView::outline).toList();
    }

    private static Outline outline(Post post) {
        return new Outline(List.of(
                Point.of(post.front(), post.foot()),
                Point.of(post.front(), post.frontTop()),
                Point.of(post.back(), post.backTop()),
                Point.of(post.back(), post.foot())));
    }

    /** One over all posts, or one in every bay. */
    public List<Outline> topRails() {
        if (guard.topRailRunsOver()) {
            List<Post> posts = guard.posts();
            Length end = posts.get(posts.size() - 1).back();
            return List.of(band(posts.get(0).front(), end, guard.topUnderside(), guard.top()));
        }
        return guard.bays().stream()
                .map(bay -> inBay(bay, guard.topUnderside(), guard.top()))
                .toList();
    }

    public List<Outline> bottomRails() {
        return guard.bays().stream()
                .map(bay -> inBay(bay, guard.bottomUnderside(), guard.bottomTop()))
                .toList();
    }

    /** Balusters, boards or panels, bay by bay from the foot. */
    public List<Outline> infill() {
        return guard.fillings().stream().flatMap(this::infill).toList();
    }

    private Stream<Outline> infill(Filling filling) {
        Bay bay = filling.bay();
        if (filling instanceof Filling.Balusters balusters) {
            return IntStream.rangeClosed(1, balusters.spacing().count()).mapToObj(piece -> {
                Length near = bay.lower().back().plus(balusters.spacing().nearEdge(piece));
                Length far = near.plus(balusters.spacing().width());
                return band(near, far, guard.bottomTop(), guard.topUnderside());
            });
        }
        if (filling instanceof Filling.Boards boards) {
            return IntStream.rangeClosed(1, boards.spacing().count()).mapToObj(piece -> board(bay, boards, piece));
        }
        return Stream.of(inBay(bay, guard.bottomTop(), guard.topUnderside()));
    }

    private Outline board(Bay bay, Filling.Boards boards, int piece) {
        RailLine low = above(boards.spacing().nearEdge(piece));
        RailLine high =
                above(boards.spacing().nearEdge(piece).plus(boards.spacing().width()));
        return inBay(bay, low, high);
    }

    /** The line this far, square to the slope, above the bottom rail. */
    private RailLine above(Length square) {
        return guard.bottomTop()
                .lowered(guard.stair().pitch().plumbForDepth(square).negated());
    }

    private static Outline inBay(Bay bay, RailLine low, RailLine high) {
        return band(bay.lower().back(), bay.upper().front(), low, high);
    }

    private static Outline band(Length from, Length to, RailLine low, RailLine high) {
        return new Outline(List.of(low.pointAt(from), high.pointAt(from), high.pointAt(to), low.pointAt(to)));
    }

    /** The handrail, where its height and section are settled. */
    public static Optional<Outline> handrail(Stair stair) {
        return HandrailRun.find(stair)
                .flatMap(run -> stair.brief()
                        .handrail()
                        .grip()
                        .map(grip -> handrail(
                                run,
                                stair.pitch()
                                        .plumbForDepth(
                                                HandrailParts.section(grip).thickness()))));
    }

    private static Outline handrail(HandrailRun run, Length thickness) {
        List<Point> corners = new ArrayList<>(run.line());
        for (int i = run.line().size() - 1; i >= 0; i--) {
            corners.add(run.line().get(i).shifted(Length.ZERO, thickness.negated()));
        }
        return new Outline(corners);
    }
}
