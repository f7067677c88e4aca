package pitchboard.rules.kinds.guards;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.plane.Point;
import pitchboard.railing.Ground;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Proviso;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.site.Side;
import pitchboard.site.Site;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Where an open side has no guard, what is beside the flight may lie no deeper than this below the treads. */
public record UnguardedDropAtMost(Clause clause, Length most, List<Proviso> provisos) implements Bounded {
    private static final String ZONE = "guard-drop-zone";

    public UnguardedDropAtMost {
        provisos = List.copyOf(provisos);
    }

    /** How far beside the flight the drop is looked for. */
    public static Proviso within(Clause clause, Length zone) {
        return Proviso.of(ZONE, "distance beside the flight within which the drop counts", clause, Limit.atMost(zone));
    }

    @Override
    public String id() {
        return "unguarded-drop-at-most";
    }

    @Override
    public String subject() {
        return "drop beside an open side without a guard";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public UnguardedDropAtMost withLimit(Quantity value) {
        return new UnguardedDropAtMost(clause, (Length) value, provisos);
    }

    @Override
    public UnguardedDropAtMost withProvisos(List<Proviso> others) {
        return new UnguardedDropAtMost(clause, most, others);
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        if (stair.site().leftSide() == Side.WALL && stair.site().rightSide() == Side.WALL) {
            return Verdict.doesNotApply("both sides are walls");
        }
        if (stair.brief().guard().wanted()) {
            return bound().judge(Length.ZERO, Place.WHOLE_FLIGHT, UnguardedDropAtMost::remedy);
        }
        Point edge = highestEdge(stair);
        Length under = Ground.below(stair, edge);
        Optional<Length> beside = besideLower(stair);
        return bound().admits(under) && beside.isEmpty()
                ? askBeside(most.minus(under))
                : bound().judge(
                                under.plus(beside.orElse(Length.ZERO)),
                                Place.at("the open side", edge),
                                UnguardedDropAtMost::remedy);
    }

    private static Phrase remedy() {
        return Phrase.of("put a guard on every open side");
    }

    /** Indoors the floor goes on level unless somebody says otherwise; of the ground outdoors nobody knows. */
    private static Optional<Length> besideLower(Stair stair) {
        Optional<Length> measured = stair.site().fallBeside();
        return stair.site().setting() == Site.Setting.INDOORS ? measured.or(() -> Optional.of(Length.ZERO)) : measured;
    }

    private Verdict askBeside(Length spare) {
        Optional<Quantity> zone =
                Proviso.find(provisos, ZONE).flatMap(Proviso::limit).map(Limit::value);
        String ask = " beside the flight falls away: more than {}, and a guard is owed";
        return zone.map(within -> Verdict.cannotTell(
                        Fact.FALL_BESIDE, "measure how far the ground within {}" + ask, within, spare))
                .orElseGet(() -> Verdict.cannotTell(Fact.FALL_BESIDE, "measure how far the ground" + ask, spare));
    }

    /** The edge of a tread that is highest above what is under it: at its nosing or at its back. */
    private static Point highestEdge(Stair stair) {
        Point highest = stair.nosing(1);
        for (int tread = 1; tread <= stair.treads(); tread++) {
            Point nosing = stair.nosing(tread);
            Point back = Point.of(stair.riserCut(tread + 1), nosing.y());
            highest = higher(stair, highest, higher(stair, nosing, back));
        }
        return highest;
    }

    private static Point higher(Stair stair, Point a, Point b) {
        return Ground.below(stair, b).isMoreThan(Ground.below(stair, a)) ? b : a;
    }
}
