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
import pitchboard.rules.Verdict;
import pitchboard.site.Side;
import pitchboard.site.Site;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** How deep what lies beside an open side without a guard is below the treads. */
final class Drop {
    private static final String ZONE = "guard-drop-zone";

    private Drop() {}

    static Proviso within(Clause clause, Length zone) {
        return Proviso.of(ZONE, "distance beside the flight within which the drop counts", clause, Limit.atMost(zone));
    }

    /**
     * Judges the drop beside the open sides of a flight.
     *
     * @param limit a length: as deep as it may be, or the depth it must stay below
     */
    static Verdict judge(Stair stair, Limit limit, List<Proviso> provisos) {
        if (stair.site().leftSide() == Side.WALL && stair.site().rightSide() == Side.WALL) {
            return Verdict.doesNotApply("both sides are walls");
        }
        if (stair.brief().guard().wanted()) {
            return limit.judge(Length.ZERO, Place.WHOLE_FLIGHT, Drop::remedy);
        }
        Point edge = highestEdge(stair);
        Length under = Ground.below(stair, edge);
        Optional<Length> beside = besideLower(stair);
        return limit.admits(under) && beside.isEmpty()
                ? askBeside(limit, under, provisos)
                : limit.judge(under.plus(beside.orElse(Length.ZERO)), Place.at("the open side", edge), Drop::remedy);
    }

    private static Phrase remedy() {
        return Phrase.of("put a guard on every open side");
    }

    /** Indoors the floor goes on level unless somebody says otherwise; of the ground outdoors nobody knows. */
    static Optional<Length> besideLower(Stair stair) {
        Optional<Length> measured = stair.site().fallBeside();
        return stair.site().setting() == Site.Setting.INDOORS ? measured.or(() -> Optional.of(Length.ZERO)) : measured;
    }

    static Verdict askBeside(Limit limit, Length under, List<Proviso> provisos) {
        Length spare = ((Length) limit.value()).minus(under);
        Optional<Quantity> zone =
                Proviso.find(provisos, ZONE).flatMap(Proviso::limit).map(Limit::value);
        String ask = limit.bound() == Limit.Bound.AT_MOST
                ? " beside the flight falls away: more than {}, and a guard is owed"
                : " beside the flight falls away: {} or more, and a guard is owed";
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
