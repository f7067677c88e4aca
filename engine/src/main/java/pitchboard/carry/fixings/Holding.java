package pitchboard.carry.fixings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pitchboard.brief.Fasteners;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.source.Figure;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Force;
import pitchboard.strength.Units;
import pitchboard.strength.fasteners.Adjustment;
import pitchboard.strength.fasteners.Capacity;
import pitchboard.strength.fasteners.Diameter;
import pitchboard.strength.fasteners.Fastener;
import pitchboard.strength.fasteners.Lateral;
import pitchboard.strength.fasteners.Member;
import pitchboard.strength.fasteners.Mode;
import pitchboard.strength.fasteners.Pulled;
import pitchboard.strength.fasteners.Wetness;
import pitchboard.strength.fasteners.YieldLimit;
import pitchboard.strength.timber.Nds;

/** What one fastener of known sizes holds in a joint (NDS 2018, chapters 11 and 12). */
final class Holding {
    private static final double ACROSS = 90;
    /** No longer than this many diameters is the tip of a lag screw, on which nothing hangs (Appendix L, from memory). */
    private static final double LAG_TIP = 0.67;
    /** Half of the point of a nail or wood screw, two diameters long, presses on nothing. */
    private static final double HALF_POINT = 1;

    private static final Factor LASTS = Factor.idle(
            "CD",
            "load duration",
            "its shortest load, people, adds up to ten years",
            Nds.SPECIFICATION.memory("11.3.2"));

    private final Fasteners.Sized said;
    private final Joint joint;

    Holding(Fasteners.Sized said, Joint joint) {
        this.said = said;
        this.joint = joint;
    }

    Answer<Fastener> fastener() {
        return switch (said.kind()) {
            case NAIL -> Fastener.nail(diameter());
            case BOLT -> Fastener.bolt(diameter());
            case LAG_SCREW -> Fastener.lagScrew(diameter());
            case WOOD_SCREW -> Fastener.woodScrew(said.gauge().orElseThrow());
        };
    }

    private Diameter diameter() {
        return new Diameter(said.diameter().orElseThrow().approxMm() / 25.4);
    }

    /** How deep it goes into the main member, a lag screw's tip left out. */
    private Answer<Length> inside(Fastener fastener) {
        if (fastener.kind() == Fastener.Kind.BOLT) {
            return joint.through().plus(joint.inMain()).isAtMost(said.length())
                    ? Answer.known(joint.inMain())
                    : Answer.unknown("a bolt this long does not reach through both pieces, which are "
                            + inches(joint.through().plus(joint.inMain())) + " in thick together");
        }
        double tip = fastener.kind() == Fastener.Kind.LAG_SCREW ? LAG_TIP : 0;
        Length past = said.length().minus(joint.through()).minus(Units.near(tip * mm(fastener)));
        Length inside = Length.min(past, joint.inMain());
        return inside.isPositive()
                ? Answer.known(inside)
                : Answer.unknown("a " + fastener.kind().inWords()
                        + " this long ends inside the piece that it goes through, which is "
                        + inches(joint.through()) + " in thick");
    }

    private static String inches(Length length) {
        return Decimals.trimmed(length.approxMm() / 25.4, 2);
    }

    private static double mm(Fastener fastener) {
        return fastener.nominal().inches() * 25.4;
    }

    /** {@code Z′} of one among so many, with every mode as a step. */
    Answer<Capacity> sheared(Fastener fastener, Answer<Factor> distances, Answer<Factor> group) {
        return inside(fastener)
                .then(inside -> deepEnough(fastener, inside)
                        .then(deep -> lateral(fastener, inside)
                                .map(lateral -> lateral.capacity().with(LASTS, wet(fastener), deep))))
                .then(capacity -> distances.map(capacity::with))
                .then(capacity -> group.map(capacity::with))
                .map(capacity -> joint.isEndGrain() ? capacity.with(Adjustment.endGrainSheared()) : capacity);
    }

    private Factor wet(Fastener fastener) {
        return joint.wetness().sheared(fastener, Wetness.Rows.SEVERAL);
    }

    /** The formulas take the depth as it is; only a least one must be there. */
    private static Answer<Factor> deepEnough(Fastener fastener, Length inside) {
        return Adjustment.depth(fastener, inside)
                .map(any -> Factor.idle(
                        "p", "depth", "the formulas take its depth as it is, and it is enough", any.source()));
    }

    Answer<Lateral> lateral(Fastener fastener, Length inside) {
        Length presses = fastener.kind() == Fastener.Kind.NAIL || fastener.kind() == Fastener.Kind.WOOD_SCREW
                ? inside.minus(Units.near(HALF_POINT * mm(fastener)))
                : inside;
        return joint.main()
                .then(gravity -> Member.wood(gravity, fastener, presses, ACROSS))
                .then(main -> joint.side()
                        .then(gravity -> Member.wood(gravity, fastener, joint.through(), ACROSS))
                        .map(side -> Lateral.of(fastener, main, side, YieldLimit.Shear.SINGLE)));
    }

    /** {@code W′} of one: what of its thread is in the main member. */
    Answer<Capacity> pulled(Fastener fastener) {
        return inside(fastener)
                .then(inside -> joint.main()
                        .then(gravity -> Pulled.out(fastener, gravity, gripping(fastener, inside), joint.grain())))
                .map(capacity -> capacity.with(LASTS, joint.wetness().pulled(fastener)));
    }

    /** The thread of a lag screw is half an inch more than half of it, that of a wood screw two thirds of it. */
    private Length gripping(Fastener fastener, Length inside) {
        double length = said.length().approxMm();
        double thread = switch (fastener.kind()) {
            case LAG_SCREW -> length / 2 + 12.7 - LAG_TIP * mm(fastener);
            case WOOD_SCREW -> length * 2 / 3;
            default -> length;
        };
        return Length.min(inside, Units.near(thread));
    }

    /** What each mode allows, before any factor. */
    List<Figure> modes(Fastener fastener, Units units) {
        List<Figure> figures = new ArrayList<>();
        inside(fastener).then(inside -> lateral(fastener, inside)).map(lateral -> {
            for (Map.Entry<Mode, Force> mode : lateral.modes().entrySet()) {
                figures.add(Figure.given(
                        mode.getKey().symbol(),
                        mode.getKey().inWords(),
                        units.show(mode.getValue()),
                        lateral.capacity().source()));
            }
            return lateral;
        });
        return figures;
    }
}
