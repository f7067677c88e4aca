package pitchboard.parts;

import pitchboard.measure.Length;

/**
 * A kind of piece and how many of it.
 *
 * @param purpose what it is for, in a few words
 * @param length of one piece as cut; for a stringer, the board it needs
 */
public record Part(PartId id, String name, String purpose, int count, Length thickness, Length width, Length length) {}
