package pitchboard.railing;

import pitchboard.measure.Length;

/**
 * From one post to the next.
 *
 * @param number counted from 1 at the foot
 */
public record Bay(int number, Post lower, Post upper) {
    /** Clear between the posts, level. */
    public Length clear() {
        return upper.front().minus(lower.back());
    }
}
