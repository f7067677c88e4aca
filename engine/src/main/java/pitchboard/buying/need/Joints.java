package pitchboard.buying.need;

import java.util.List;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.parts.Part;
import pitchboard.parts.StringerSpacing;
import pitchboard.railing.Brackets;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Post;
import pitchboard.stair.Stair;

/**
 * Where a piece may be joined of two: over the middle of a stringer, a post or a bracket (common practice, no source).
 * Stringers, treads, posts and head boards are never joined; nor is a rail that is fitted between two posts.
 */
final class Joints {
    private Joints() {}

    /** From the left end of riser and foot boards, from the lower end of rails; on a line of the job's tape. */
    static List<Length> of(Stair stair, Part part) {
        Graduation graduation = stair.brief().tape().graduation();
        return places(stair, part).stream()
                .map(place -> place.rounded(graduation))
                .filter(place -> place.isPositive() && place.isLessThan(part.length()))
                .toList();
    }

    private static List<Length> places(Stair stair, Part part) {
        StringerSpacing spacing = StringerSpacing.of(stair.brief());
        return switch (part.id().mark().replaceAll("[0-9]", "")) {
            case "R", "RB", "RT", "RS" -> spacing.middles();
            case "F" ->
                spacing.middles().stream()
                        .map(middle -> middle.minus(spacing.stringers().treadOverhang()))
                        .toList();
            case "GT" -> overPosts(stair);
            case "HR" -> Brackets.find(stair).map(Brackets::places).orElse(List.of());
            default -> List.of();
        };
    }

    /** Only a rail that lies on the posts. */
    private static List<Length> overPosts(Stair stair) {
        return GuardLayout.find(stair)
                .filter(GuardLayout::topRailRunsOver)
                .map(guard -> {
                    List<Post> posts = guard.posts();
                    return posts.stream()
                            .map(post -> stair.pitch()
                                    .alongForLevel(
                                            post.middle().minus(posts.get(0).front())))
                            .toList();
                })
                .orElse(List.of());
    }
}
