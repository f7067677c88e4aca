/**
 * The solver and the geometry: which stairs are possible, and where every cut of the chosen one lies.
 * In: {@code site} and {@code brief}, and a {@link pitchboard.stair.Gate} that speaks for a rulebook. Out: ranked
 * choices or reasons why no stair fits; one {@link pitchboard.stair.Stair} with its stringer's outline and figures.
 * Knows no rulebook, no board to buy, no paper.
 */
package pitchboard.stair;
