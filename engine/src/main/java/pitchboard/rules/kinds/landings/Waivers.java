package pitchboard.rules.kinds.landings;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.site.Landing;
import pitchboard.site.Site;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** What lets a flight off a landing, or off a demand on one. */
public final class Waivers {
    private static final String TOP_INDOORS = "top-landing-waiver-indoors";
    private static final String TOP_OUTDOORS = "top-landing-waiver-outdoors";
    private static final String LOW_CLIMB = "top-landing-waiver-climb";
    private static final String GROUND_ONLY = "ground-landing-only";

    private Waivers() {}

    /** No landing is owed at the top of an interior flight that no door swings over. */
    public static Proviso topIndoors(Clause clause) {
        return Proviso.of(TOP_INDOORS, "interior flight that no door swings over", clause);
    }

    /** No landing is owed at the top of so few risers outside a door that is not the required egress door. */
    public static Proviso topOutdoors(Clause clause, Count risers) {
        return Proviso.of(TOP_OUTDOORS, "risers outside a door that need no top landing", clause, Limit.atMost(risers));
    }

    /** No landing is owed at the top of a flight that climbs no more than this. */
    public static Proviso topOfLowClimb(Clause clause, Length climb) {
        return Proviso.of(LOW_CLIMB, "climb up to which no top landing is owed", clause, Limit.atMost(climb));
    }

    /** The demand is only on a landing that the ground itself makes. */
    public static Proviso groundOnly(Clause clause) {
        return Proviso.of(GROUND_ONLY, "landing made by the ground itself", clause);
    }

    /** Why nothing is owed, or what must be known to say so; empty when the landing is owed. */
    static Optional<Verdict> find(Stair stair, List<Proviso> provisos) {
        Optional<Proviso> low = Proviso.find(provisos, LOW_CLIMB)
                .filter(climb -> climb.isMetBy(stair.flight().totalRise()));
        if (low.isPresent()) {
            return low.flatMap(Proviso::limit)
                    .map(climb -> Verdict.doesNotApply("no top landing is owed up to a climb of {}", climb.value()));
        }
        if (stair.site().setting() == Site.Setting.INDOORS) {
            return Proviso.find(provisos, GROUND_ONLY)
                    .map(any -> Verdict.doesNotApply("this landing is a floor, not the ground"))
                    .or(() -> Proviso.find(provisos, TOP_INDOORS).flatMap(any -> indoors(stair)));
        }
        return Proviso.find(provisos, TOP_OUTDOORS)
                .filter(few -> few.isMetBy(new Count(stair.flight().risers())))
                .flatMap(few -> outdoors(stair));
    }

    private static Optional<Verdict> indoors(Stair stair) {
        Optional<Landing.Door> door = stair.site().top().door();
        if (door.isEmpty()) {
            return Optional.of(
                    Verdict.cannotTell(Fact.TOP_DOOR, "say whether a door swings over the top of the stair"));
        }
        return door.get() == Landing.Door.SWINGS_OVER_STAIR
                ? Optional.empty()
                : Optional.of(Verdict.doesNotApply(
                        "no landing is owed at the top of an interior flight that no door swings over"));
    }

    private static Optional<Verdict> outdoors(Stair stair) {
        Optional<Landing.Door> door = stair.site().top().door();
        if (door.isEmpty()) {
            return Optional.of(Verdict.cannotTell(Fact.TOP_DOOR, "say whether a door opens at the top of the stair"));
        }
        return door.get() == Landing.Door.SWINGS_AWAY
                ? Optional.of(
                        Verdict.cannotTell(
                                "ask whether the door at the top is the required egress door: if not, so few risers need no landing"))
                : Optional.empty();
    }
}
