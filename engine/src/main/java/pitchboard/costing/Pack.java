package pitchboard.costing;

import pitchboard.measure.Ratio;
import pitchboard.money.Money;

/**
 * A pack as it is sold.
 *
 * @param name size and kind, such as {@code 3 in, box of 100}
 * @param holds how much of it, in the sundry's own unit
 */
public record Pack(Sundry kind, String name, Ratio holds, Money price) {
    /** A fluid ounce of the United States is 231/128 cubic inches. */
    private static final Ratio CUBIC_INCHES_A_FLUID_OUNCE = Ratio.of(231, 128);

    private static final Ratio INCHES_A_FOOT = Ratio.of(12);

    public Pack {
        if (holds.signum() <= 0) {
            throw new IllegalArgumentException("a pack that holds " + holds);
        }
    }

    /**
     * Feet of round bead, a quarter inch across, in a cartridge: its volume over the area of the bead, with 355/113 for
     * the circle's number. 10 oz is 30.6 ft, 28 oz 85.8 ft (computed).
     */
    public static Ratio beadOf(Ratio fluidOunces) {
        Ratio area = Ratio.of(355, 113).times(Ratio.of(1, 64));
        return fluidOunces.times(CUBIC_INCHES_A_FLUID_OUNCE).dividedBy(area).dividedBy(INCHES_A_FOOT);
    }

    /**
     * Cubic feet of concrete a bag of dry mix yields: 0.60 for 80 lb and in proportion; 40 lb 0.30 and 80 lb 0.60 in a
     * trade reference for estimators, 60 lb by proportion.
     */
    public static Ratio concreteOf(Ratio pounds) {
        return pounds.times(Ratio.of(3, 400));
    }

    /**
     * The same of a bag by the kilogram: a pound is 0.45359237 kg (exact, by definition). 20 kg yield 0.331 cubic feet,
     * 9.4 litres; 25 kg 11.7 litres (computed in proportion).
     */
    public static Ratio concreteOfKilograms(Ratio kilograms) {
        return concreteOf(kilograms.dividedBy(Ratio.of(45_359_237, 100_000_000)));
    }

    /** Square feet in a square metre: a foot is 0.3048 m. */
    public static Ratio squareFeetOf(Ratio squareMetres) {
        Ratio feet = Ratio.of(10_000, 3048);
        return squareMetres.times(feet).times(feet);
    }
}
