package pitchboard.buying.order;

import pitchboard.buying.need.Need;

/**
 * A need that these boards cannot meet.
 *
 * @param because what is in the way
 * @param advice what would help
 */
public record Unmet(Need need, String because, String advice) {}
