package pitchboard.strength.fasteners;

import pitchboard.source.Source;
import pitchboard.strength.Factor;
import pitchboard.strength.timber.Nds;

/**
 * How wet the wood is when the joint is made and when it is used, NDS 2018 Table 11.3.3, from memory.
 *
 * @param madeWet above 19 % when the fastener goes in
 * @param usedWet above 19 % later, as outdoors
 */
public record Wetness(boolean madeWet, boolean usedWet) {
    private static final Source SOURCE = Nds.SPECIFICATION.memory("Table 11.3.3");
    private static final String NAME = "wet service";

    public static final Wetness DRY = new Wetness(false, false);

    /** Whether fasteners of 1/4 in or more in wood that shrinks can split it. */
    public enum Rows {
        /** One fastener, or one row along the grain, or a row each with its own plate. */
        FREE_TO_SHRINK,
        SEVERAL
    }

    /** {@code CM} on a sheared fastener. */
    public Factor sheared(Fastener fastener, Rows rows) {
        if (usedWet) {
            return new Factor("CM", NAME, 0.7, "it is wet in use", SOURCE);
        }
        if (!madeWet) {
            return Factor.idle("CM", NAME, "it is dry from the beginning", SOURCE);
        }
        if (!fastener.nominal().isLarge()) {
            return new Factor("CM", NAME, 0.7, "it is put in wet and dries", SOURCE);
        }
        return rows == Rows.FREE_TO_SHRINK
                ? Factor.idle(
                        "CM", NAME, "it is put in wet and dries, but nothing keeps the wood from shrinking", SOURCE)
                : new Factor(
                        "CM", NAME, 0.4, "it is put in wet and dries, and several rows hold the wood apart", SOURCE);
    }

    /** {@code CM} on a pulled fastener. */
    public Factor pulled(Fastener fastener) {
        if (fastener.kind() == Fastener.Kind.NAIL) {
            return madeWet == usedWet
                    ? Factor.idle("CM", NAME, "it is as wet in use as when it was put in", SOURCE)
                    : new Factor("CM", NAME, 0.25, "the wood dries or becomes wet around a smooth nail", SOURCE);
        }
        return usedWet
                ? new Factor("CM", NAME, 0.7, "it is wet in use", SOURCE)
                : Factor.idle("CM", NAME, "it is dry in use", SOURCE);
    }
}
