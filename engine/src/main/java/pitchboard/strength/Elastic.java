package pitchboard.strength;

import pitchboard.source.Source;

/**
 * How stiff one wood is in the plane of a board's wide face, along and across the grain.
 *
 * @param along modulus of elasticity along the grain
 * @param across modulus of elasticity across the grain
 * @param shear shear modulus of the plane
 * @param poisson how much it narrows across for a stretch along
 * @param of the wood whose constants these are, in words; not always the very wood of the board
 */
public record Elastic(Stress along, Stress across, Stress shear, double poisson, String of, Source source) {}
