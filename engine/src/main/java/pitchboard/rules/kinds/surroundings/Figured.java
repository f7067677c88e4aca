package pitchboard.rules.kinds.surroundings;

import pitchboard.rules.Rule;

/** A rule with a figure that no quantity of this program holds, such as a load; it is told in words. */
public interface Figured extends Rule {
    /** Such as {@code 40 psf}; empty when there is none. */
    String figure();
}
