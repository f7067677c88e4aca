package pitchboard.carry;

import pitchboard.measure.Length;

/**
 * How far apart the stringers may stand under one tread board, from middle to middle.
 *
 * @param board as the yard calls it
 * @param governedBy {@code bending} or {@code deflection}
 */
public record TreadSpacing(String board, Length greatest, String governedBy) {}
