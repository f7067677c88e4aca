package pitchboard.strength.fasteners;

import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.timber.Nds;

/** The factors on fasteners that follow from how the joint is made, NDS 2018 11.3 and 12.5, each with its reason. */
public final class Adjustment {
    private static final Source END_GRAIN = Nds.SPECIFICATION.memory("12.5.2");
    private static final Source TOE_NAIL = Nds.SPECIFICATION.memory("12.5.4");
    private static final Source DEPTH = Nds.SPECIFICATION.read("12.1");

    private Adjustment() {}

    /** Sheared in end grain: 0.67. */
    public static Factor endGrainSheared() {
        return new Factor("Ceg", "end grain", 0.67, "it is sheared in end grain", END_GRAIN);
    }

    static Factor lagInEndGrain() {
        return new Factor("Ceg", "end grain", 0.75, "it is pulled from end grain", END_GRAIN);
    }

    /** Driven at 30° a third of its length from the end: 0.83 in shear. */
    public static Factor toeNailSheared() {
        return new Factor("Ctn", "toe-nail", 0.83, "it is driven as a toe-nail, at 30°, L/3 from the end", TOE_NAIL);
    }

    /** 0.67 in withdrawal. */
    public static Factor toeNailPulled() {
        return new Factor("Ctn", "toe-nail", 0.67, "it is driven as a toe-nail, at 30°, L/3 from the end", TOE_NAIL);
    }

    /**
     * How deep the fastener goes into the main member, over what the tables rest on: 10 D for nails and wood screws, 8 D for
     * lag screws; the least is 6 D and 4 D.
     *
     * @param inside without a lag screw's tip
     */
    public static Answer<Factor> depth(Fastener fastener, Length inside) {
        boolean lag = fastener.kind() == Fastener.Kind.LAG_SCREW;
        if (fastener.kind() == Fastener.Kind.BOLT) {
            return Answer.known(Factor.idle("p", "depth", "a bolt goes right through", DEPTH));
        }
        double diameters = inside.approxMm() / 25.4 / fastener.nominal().inches();
        double full = lag ? 8 : 10;
        double least = lag ? 4 : 6;
        if (diameters < least - 1e-9) {
            return Answer.unknown("the " + fastener.kind().inWords() + " goes in " + Decimals.trimmed(diameters, 2)
                    + " diameters; at least " + (int) least + " are needed");
        }
        return Answer.known(
                diameters >= full - 1e-9
                        ? Factor.idle("p", "depth", "it goes in " + (int) full + " diameters or more", DEPTH)
                        : new Factor(
                                "p",
                                "depth",
                                diameters / full,
                                "it goes in less than " + (int) full + " diameters",
                                DEPTH));
    }
}
