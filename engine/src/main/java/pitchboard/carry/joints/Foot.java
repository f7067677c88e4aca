package pitchboard.carry.joints;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.Resistance;
import pitchboard.strength.Stress;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;
import pitchboard.strength.fasteners.Capacity;

/**
 * The foot of one stringer.
 *
 * @param bearing along the seat, what really lies on something
 * @param thickness of the stringer
 */
public record Foot(Length bearing, Length thickness) {
    /** The wood at the seat, pressed across its grain (the grain is askew to a level cut, which is the safe side). */
    public Answer<Utilisation> bearing(Force reaction, Resistance across, Units units) {
        if (!bearing.isPositive() || !thickness.isPositive()) {
            return Answer.unknown("nothing of the foot lies on anything; a seat must bear over some length");
        }
        Stress pressed = new Stress(reaction.newtons() / (bearing.approxMm() * thickness.approxMm()));
        Figure demand = new Figure(
                "fc⊥",
                "pressure at the seat",
                "R / (length × thickness)",
                List.of(
                        new Figure.Input("R", units.show(reaction)),
                        new Figure.Input("length", bearing),
                        new Figure.Input("thickness", thickness)),
                units.show(pressed),
                Working.STATICS);
        return Answer.known(new Utilisation(
                "bearing at the foot",
                "dead and live load",
                demand,
                across.figure(units),
                pressed.over(across.value()),
                across.factors(),
                List.of()));
    }

    /**
     * A level push at the foot, taken by the fasteners of a kicker or an anchor; friction is left out.
     *
     * @param count of fasteners, one or more
     */
    public static Answer<Utilisation> slip(Force push, int count, Capacity each, Units units) {
        if (count < 1) {
            return Answer.unknown(
                    "nothing but friction keeps the foot from sliding, which is not counted on; fix a kicker "
                            + "or an anchor");
        }
        Figure demand = Figure.given("H", "level push at the foot", units.show(push), Practice.ASKED_FOR);
        return Answer.known(Working.compare(
                "slip of the foot",
                "level push",
                demand,
                push,
                Working.several(count, each, units),
                each.value().times(count),
                each.factors()));
    }
}
