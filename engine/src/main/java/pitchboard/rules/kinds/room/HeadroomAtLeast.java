package pitchboard.rules.kinds.room;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Proviso;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Headroom;
import pitchboard.stair.Stair;

/** Everything above the flight must be at least this far, plumb, above the line of the nosings and the floors at both
 * ends. */
public record HeadroomAtLeast(Clause clause, Length least, List<Proviso> provisos) implements Bounded {
    private static final String IN_A_LOFT = "headroom-in-a-loft";

    public HeadroomAtLeast {
        provisos = List.copyOf(provisos);
    }

    /** A lesser headroom that is accepted over the middle of a stair to a loft conversion. */
    public static Proviso inALoft(Clause clause, Length lesser) {
        return Proviso.of(IN_A_LOFT, "headroom in a loft conversion", clause, Limit.atLeast(lesser));
    }

    @Override
    public String id() {
        return "headroom-at-least";
    }

    @Override
    public String subject() {
        return "headroom";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public HeadroomAtLeast withLimit(Quantity value) {
        return new HeadroomAtLeast(clause, (Length) value, provisos);
    }

    @Override
    public HeadroomAtLeast withProvisos(List<Proviso> others) {
        return new HeadroomAtLeast(clause, least, others);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE, Reading.OVERHEAD);
    }

    @Override
    public Verdict judge(Stair stair) {
        return stair.headroom().map(tightest -> judge(stair, tightest)).orElseGet(() -> nothingAbove(stair));
    }

    private static Verdict nothingAbove(Stair stair) {
        return stair.site().overheadChecked()
                ? Verdict.doesNotApply("nothing is above the flight")
                : Verdict.cannotTell(
                        Fact.OVERHEAD, "look up: measure what is above the flight, or say that nothing is");
    }

    private Verdict judge(Stair stair, Headroom tightest) {
        Length clear = tightest.clear();
        Optional<Proviso> lesser = Proviso.find(provisos, IN_A_LOFT).filter(proviso -> proviso.isMetBy(clear));
        if (!bound().admits(clear) && lesser.isPresent()) {
            return Verdict.cannotTell(
                    "ask whether this counts as a loft conversion: then {} over the middle is accepted, and {} is there",
                    lesser.get().limit().orElseThrow().value(),
                    clear);
        }
        Place where = Place.at("under " + tightest.overhead().name(), tightest.at());
        return bound().judge(clear, where, () -> remedy(stair, tightest));
    }

    /** Farther from the head the nosings are lower; over the floor at the foot that comes to an end. */
    private Phrase remedy(Stair stair, Headroom tightest) {
        Length missing = least.minus(tightest.clear());
        Length aside = OnTape.noLess(stair, stair.pitch().levelFor(missing));
        Phrase lift = Phrase.of("raise it by {}", OnTape.noLess(stair, missing));
        return tightest.at().y().isAtLeast(missing)
                ? lift.and(", or ", Phrase.of("cut it back by {}, away from the head", aside))
                : lift;
    }
}
