package pitchboard.strength.fasteners;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.timber.Nds;

/** Fasteners pulled along their length: out of the wood, or their head through it. NDS 2018 12.2. */
public final class Pulled {
    private static final double MM = 25.4;

    /** What the point of a fastener is driven into. */
    public enum Grain {
        SIDE,
        END
    }

    private Pulled() {}

    /**
     * Out of side or end grain. Lag screw {@code 1800 G^1.5 D^0.75}, wood screw {@code 2850 G² D}, smooth nail
     * {@code 1380 G^2.5 D} lb per inch, D nominal; through the main member only, a screw's tip left out.
     *
     * @param gravity of the main member
     * @param inside length of thread, or of a nail, in the main member
     */
    public static Answer<Capacity> out(Fastener fastener, double gravity, Length inside, Grain grain) {
        if (!(gravity > 0 && gravity <= 0.73 + 1e-9) || !inside.isPositive()) {
            return Answer.unknown("withdrawal needs wood of a specific gravity up to 0.73 and some length in it");
        }
        if (grain == Grain.END && fastener.kind() != Fastener.Kind.LAG_SCREW) {
            return Answer.unknown("a " + fastener.kind().inWords()
                    + " in end grain may not be loaded in withdrawal; use a lag screw, or turn the joint");
        }
        return perInch(fastener, gravity).map(pounds -> {
            Force force = Force.pounds(pounds * inside.approxMm() / MM);
            Capacity plain = new Capacity(
                    "W", "one fastener pulled out", Optional.empty(), force, List.of(), source(fastener.kind()));
            return grain == Grain.END ? plain.with(Adjustment.lagInEndGrain()) : plain;
        });
    }

    /** Pounds for each inch in the wood, as the tables print it but unrounded. */
    static Answer<Double> perInch(Fastener fastener, double gravity) {
        double d = fastener.nominal().inches();
        return switch (fastener.kind()) {
            case NAIL -> Answer.known(1380 * Math.pow(gravity, 2.5) * d);
            case WOOD_SCREW -> Answer.known(2850 * gravity * gravity * d);
            case LAG_SCREW -> Answer.known(1800 * Math.pow(gravity, 1.5) * Math.pow(d, 0.75));
            case BOLT -> Answer.unknown("a bolt is not held by the wood along its shank; its washer is");
        };
    }

    private static Source source(Fastener.Kind kind) {
        return Nds.SPECIFICATION.read(
                kind == Fastener.Kind.NAIL ? "12.2.3" : kind == Fastener.Kind.WOOD_SCREW ? "12.2.2" : "12.2.1");
    }

    /**
     * A round head through the side member: {@code 690 π DH G² t} while t is at most 2.5 DH, else {@code 1725 π DH² G²} lb.
     *
     * @param gravity of the side member
     * @param head diameter of the head
     * @param side net thickness under the head
     */
    public static Answer<Capacity> through(Diameter head, double gravity, Length side) {
        if (!(gravity > 0 && gravity <= 0.73 + 1e-9) || !side.isPositive()) {
            return Answer.unknown("pull-through needs a side member of wood, specific gravity up to 0.73");
        }
        double dh = head.inches();
        double t = side.approxMm() / MM;
        double pounds = t <= 2.5 * dh
                ? 690 * Math.PI * dh * gravity * gravity * t
                : 1725 * Math.PI * dh * dh * gravity * gravity;
        return Answer.known(new Capacity(
                "WH",
                "one head pulled through",
                Optional.empty(),
                Force.pounds(pounds),
                List.of(),
                Nds.SPECIFICATION.read("12.2.5")));
    }
}
