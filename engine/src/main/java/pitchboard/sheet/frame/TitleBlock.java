package pitchboard.sheet.frame;

import pitchboard.brief.Title;

/**
 * The words that all sheets of a set carry.
 *
 * @param rulebook edition the stair was judged by
 * @param fingerprint of everything that was put in
 * @param caution one sentence along the foot
 */
public record TitleBlock(Title title, String rulebook, String fingerprint, String caution) {}
