package pitchboard.railing;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import pitchboard.brief.Posts;
import pitchboard.measure.Length;
import pitchboard.stair.Stair;

/**
 * On which steps the posts stand: on the first and the last, and between them evenly in whole steps, with as few posts
 * as the greatest spacing allows.
 *
 * @param steps from the foot; a single one when the flight is too short for two posts
 */
public record PostPlaces(Stair stair, Posts posts, List<Integer> steps) {
    public PostPlaces {
        steps = List.copyOf(steps);
    }

    public static PostPlaces of(Stair stair, Posts posts) {
        int whole = stair.treads() - 1;
        long allowed = Math.max(1, posts.greatestSpacing().wholeTimes(stair.run()));
        long wanted = (whole + allowed - 1) / allowed;
        // Neighbours must leave a bay between them.
        long fewestSteps = posts.section().width().wholeTimes(stair.run()) + 1;
        long bays = Math.min(wanted, whole / fewestSteps);
        List<Integer> steps = LongStream.rangeClosed(0, bays)
                .mapToObj(post -> bays == 0 ? 1 : Math.toIntExact(1 + post * whole / bays))
                .toList();
        return new PostPlaces(stair, posts, steps);
    }

    /** The widest spacing, level from middle to middle; zero for a single post. */
    public Length widest() {
        int most = IntStream.range(1, steps.size())
                .map(i -> steps.get(i) - steps.get(i - 1))
                .max()
                .orElse(0);
        return stair.run().times(most);
    }

    /** Whether no spacing passes the greatest; not so where the run of a single step does already. */
    public boolean keepSpacing() {
        return widest().isAtMost(posts.greatestSpacing());
    }

    /** From the nosing back to the front of every post. */
    public Length behindNosing() {
        return posts.behindNosing()
                .orElseGet(() -> stair.run().minus(posts.section().width()).dividedBy(2));
    }

    Length front(int step) {
        return stair.nosing(step).x().plus(behindNosing());
    }
}
