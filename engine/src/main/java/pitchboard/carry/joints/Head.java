package pitchboard.carry.joints;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.source.Figure;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Force;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;
import pitchboard.strength.fasteners.Capacity;
import pitchboard.strength.fasteners.Combined;

/** The head of one stringer on its header: what its reaction asks of screws or of a metal part. */
public final class Head {
    private static final Source STATICS = Working.STATICS;

    private Head() {}

    /** Screws or lags through a hanger board or ledger, sheared. */
    public static Answer<Utilisation> sheared(Force reaction, int count, Capacity each, Units units) {
        if (count < 1) {
            return Answer.unknown("no screw holds the head; say how many there are");
        }
        Figure demand = Figure.given("R", "reaction at the head", units.show(reaction), STATICS);
        return Answer.known(Working.compare(
                "screws at the head",
                "dead and live load",
                demand,
                reaction,
                Working.several(count, each, units),
                each.value().times(count),
                each.factors()));
    }

    /**
     * The same when the head also pulls away from the header, as when the foot pushes: shear and pull at once.
     *
     * @param shear of one lag or wood screw
     * @param pull what one may be pulled with
     */
    public static Answer<Utilisation> shearedAndPulled(
            Force reaction, Force away, int count, Capacity shear, Capacity pull, Units units) {
        if (count < 1) {
            return Answer.unknown("no screw holds the head; say how many there are");
        }
        double degrees = Math.toDegrees(Math.atan2(away.newtons(), reaction.newtons()));
        Force each = Combined.screw(pull.value(), shear.value(), degrees);
        Force both = new Force(Math.hypot(reaction.newtons(), away.newtons()));
        Figure down = Figure.given("R", "reaction at the head", units.show(reaction), STATICS);
        Figure out = Figure.given("N", "pull away from the header", units.show(away), STATICS);
        Figure demand = Working.force("Rα", "both together", "√(R² + N²)", both, units, STATICS, down, out);
        Figure capacity = Working.force(
                "nZα′",
                "all of them",
                count + " × W′ Z′ / (W′ cos²α + Z′ sin²α)",
                each.times(count),
                units,
                Combined.SOURCE,
                Figure.given("W′", pull.meaning(), units.show(pull.value()), pull.source()),
                Figure.given("Z′", shear.meaning(), units.show(shear.value()), shear.source()));
        List<Factor> factors = new ArrayList<>(shear.factors());
        factors.addAll(pull.factors());
        return Answer.known(Working.compare(
                "screws at the head, sheared and pulled",
                "dead and live load",
                demand,
                both,
                capacity,
                each.times(count),
                factors));
    }

    /** What a sloped metal hanger must be allowed to hold, whatever its kind. */
    public static Figure neededOfHanger(Force reaction, Units units) {
        return Figure.given("R", "what a hanger at the head must be allowed to hold", units.show(reaction), STATICS);
    }

    /** Why the header holds less than it seems; empty when the whole height bears. */
    public static List<String> contact(Length contact, Length needed) {
        return contact.isAtLeast(needed)
                ? List.of()
                : List.of(
                        "the head lies against the header over less than the fasteners need between their rows and edges");
    }
}
