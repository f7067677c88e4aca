package pitchboard.carry.fixings;

import pitchboard.measure.Length;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Stress;
import pitchboard.strength.Units;
import pitchboard.strength.fasteners.Fastener;
import pitchboard.strength.fasteners.Group;
import pitchboard.strength.fasteners.Layout;
import pitchboard.strength.timber.Nds;

/**
 * How fasteners stand one above the other in the height there is: two in a line side by side, the lines as far apart as
 * four diameters or as the room allows.
 *
 * @param number of them
 */
record Standing(Joint joint, int number) {
    private static final double LOADED_EDGE = 4;
    private static final double OTHER_EDGE = 1.5;
    private static final double FULL = 4;
    private static final double LEAST = 3;
    private static final double FREE = 10;
    /** Of the weakest wood: a softer member shares less evenly. */
    private static final Stress SOFT = Stress.psi(1_000_000);

    private int lines() {
        return (number + 1) / 2;
    }

    private static boolean isThin(Fastener fastener) {
        return fastener.nominal().inches() < 0.25 - 1e-9;
    }

    /** {@code Cdelta}. */
    Answer<Factor> distances(Fastener fastener) {
        if (isThin(fastener)) {
            return Answer.known(Factor.idle(
                    "Cdelta",
                    "distances",
                    "thinner than 1/4 in: as far from edges and ends as keeps the wood from splitting",
                    Nds.SPECIFICATION.memory("12.1.5.7")));
        }
        if (joint.room().isEmpty()) {
            return Answer.known(Factor.idle(
                    "Cdelta",
                    "distances",
                    "seven diameters from ends, four from edges and from one to the next",
                    Nds.SPECIFICATION.memory("12.5.1")));
        }
        double d = fastener.nominal().inches() * 25.4;
        double spare = joint.room().get().approxMm() - OTHER_EDGE * d;
        double between = between(d, spare);
        double toEdge = spare - (lines() - 1) * between;
        return new Layout(
                        fastener.nominal(),
                        Layout.Direction.ACROSS,
                        Units.near(FREE * d),
                        Units.near(toEdge),
                        Units.near(OTHER_EDGE * d + 0.01),
                        lines() > 1 ? Units.near(between + 0.01) : Length.ZERO,
                        Length.ZERO,
                        joint.through())
                .factor();
    }

    private double between(double d, double spare) {
        if (lines() < 2) {
            return 0;
        }
        double most = (spare - LOADED_EDGE * d) / (lines() - 1);
        return Math.max(LEAST * d, Math.min(FULL * d, most));
    }

    /** {@code Cg}. */
    Answer<Factor> group(Fastener fastener) {
        double d = fastener.nominal().inches() * 25.4;
        double high = (lines() - 1) * FULL * d + FULL * d;
        return new Group(
                        lines(),
                        Units.near(FULL * d),
                        fastener.nominal(),
                        SOFT,
                        joint.inMain().approxMm() * high,
                        SOFT,
                        joint.through().approxMm() * high,
                        /* steelSide= */ false)
                .factor();
    }
}
