/**
 * Will it carry? Turns a solved stair into load cases, holds its members against what they may bear, and says what would
 * make them pass.
 * In: a {@link pitchboard.stair.Stair} and the rulebook whose loads it must carry. Out: {@link pitchboard.carry.Carried}.
 * Published formulas live in {@code strength}; here is what a stair makes of them. Where no published rule reaches, that
 * is said, and an engineer is named.
 */
package pitchboard.carry;
