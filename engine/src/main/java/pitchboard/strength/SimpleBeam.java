package pitchboard.strength;

import pitchboard.measure.Length;

/**
 * A beam on two supports. Loads act square to it or, on a sloping beam, are the plumb loads over the plan of its span:
 * reactions and moments are the same. Deflections leave out the give of shear.
 */
public record SimpleBeam(Length span) {
    public SimpleBeam {
        if (!span.isPositive()) {
            throw new IllegalArgumentException("a beam has a span above zero, not " + span);
        }
    }

    private double mm() {
        return span.approxMm();
    }

    /** {@code w·L / 2}, at each end. */
    public Force endReaction(LineLoad load) {
        return new Force(load.nPerMm() * mm() / 2);
    }

    /** {@code P·(L − a) / L}: what the support bears that the load is {@code a} away from. */
    public Force reaction(Force load, Length away) {
        return load.times((mm() - within(away)) / mm());
    }

    /** {@code w·L² / 8}, at mid span. */
    public Moment moment(LineLoad load) {
        return new Moment(load.nPerMm() * mm() * mm() / 8);
    }

    /** {@code w·x·(L − x) / 2}, at a place. */
    public Moment momentAt(LineLoad load, Length x) {
        double at = within(x);
        return new Moment(load.nPerMm() * at * (mm() - at) / 2);
    }

    /** {@code P·L / 4}: with the load at mid span, which is the worst place. */
    public Moment moment(Force load) {
        return new Moment(load.newtons() * mm() / 4);
    }

    /** {@code P·a·(L − a) / L}: under a load that is {@code a} from one support. */
    public Moment momentUnder(Force load, Length away) {
        double a = within(away);
        return new Moment(load.newtons() * a * (mm() - a) / mm());
    }

    /** {@code 5·w·L⁴ / (384·E·I)}, at mid span. */
    public double deflectionMm(LineLoad load, Stress modulus, Section section) {
        double length = mm();
        return 5 * load.nPerMm() * length * length * length * length / (384 * modulus.nPerMm2() * section.inertiaMm4());
    }

    /** {@code P·L³ / (48·E·I)}, at mid span, the load there too. */
    public double deflectionMm(Force load, Stress modulus, Section section) {
        double length = mm();
        return load.newtons() * length * length * length / (48 * modulus.nPerMm2() * section.inertiaMm4());
    }

    private double within(Length away) {
        double at = away.approxMm();
        if (at < 0 || at > mm()) {
            throw new IllegalArgumentException("a place on a beam of " + span + " is on it, not at " + away);
        }
        return at;
    }
}
