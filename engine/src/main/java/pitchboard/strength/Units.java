package pitchboard.strength;

import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;

/** In which units a document gives its values, and in which they are therefore shown. */
public enum Units {
    POUNDS(
            Unit.PSI,
            Unit.POUND,
            Unit.FOOT_POUND,
            Unit.POUND_PER_FOOT,
            Unit.PSF,
            Unit.SQUARE_INCH,
            Unit.CUBIC_INCH,
            Unit.INCH_TO_THE_FOURTH),
    NEWTONS(
            Unit.N_PER_MM2,
            Unit.KILONEWTON,
            Unit.KILONEWTON_METRE,
            Unit.KILONEWTON_PER_METRE,
            Unit.KILONEWTON_PER_M2,
            Unit.SQUARE_MM,
            Unit.CUBIC_MM,
            Unit.MM_TO_THE_FOURTH);

    /** The international pound-force; exact. */
    static final double NEWTONS_PER_POUND = 4.4482216152605;

    static final double MM_PER_INCH = 25.4;
    static final double MM_PER_FOOT = 304.8;

    private static final double MANY_PSI = 100_000;

    private final Unit stress;
    private final Unit force;
    private final Unit moment;
    private final Unit lineLoad;
    private final Unit areaLoad;
    private final Unit area;
    private final Unit modulus;
    private final Unit inertia;

    Units(Unit stress, Unit force, Unit moment, Unit lineLoad, Unit areaLoad, Unit area, Unit modulus, Unit inertia) {
        this.stress = stress;
        this.force = force;
        this.moment = moment;
        this.lineLoad = lineLoad;
        this.areaLoad = areaLoad;
        this.area = area;
        this.modulus = modulus;
        this.inertia = inertia;
    }

    private boolean isPounds() {
        return this == POUNDS;
    }

    public Reckoned show(Stress value) {
        if (!isPounds()) {
            return new Reckoned(value.nPerMm2(), stress);
        }
        return Math.abs(value.psi()) >= MANY_PSI
                ? new Reckoned(value.psi() / 1e6, Unit.MILLION_PSI)
                : new Reckoned(value.psi(), stress);
    }

    public Reckoned show(Force value) {
        return new Reckoned(isPounds() ? value.pounds() : value.newtons() / 1e3, force);
    }

    public Reckoned show(Moment value) {
        return new Reckoned(isPounds() ? value.footPounds() : value.nMm() / 1e6, moment);
    }

    public Reckoned show(LineLoad value) {
        return new Reckoned(isPounds() ? value.poundsPerFoot() : value.nPerMm(), lineLoad);
    }

    public Reckoned show(AreaLoad value) {
        return new Reckoned(isPounds() ? value.psf() : value.nPerMm2() * 1e3, areaLoad);
    }

    public Reckoned area(Section section) {
        return new Reckoned(section.areaMm2() / scale(2), area);
    }

    public Reckoned modulus(Section section) {
        return new Reckoned(section.modulusMm3() / scale(3), modulus);
    }

    public Reckoned inertia(Section section) {
        return new Reckoned(section.inertiaMm4() / scale(4), inertia);
    }

    private double scale(int power) {
        double scale = 1;
        for (int i = 0; i < power && isPounds(); i++) {
            scale *= MM_PER_INCH;
        }
        return scale;
    }

    /** A length that was reckoned, to a hundredth of a millimetre: never one that is cut by. */
    public static Length near(double mm) {
        return Length.mm(Decimals.ratio(mm, 2));
    }
}
