package pitchboard.rules.kinds.surroundings;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.landings.Doors;
import pitchboard.site.Landing;
import pitchboard.site.Sight;
import pitchboard.site.Sights;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/**
 * The landing at the required way out lies no farther below its sill than this.
 *
 * @param bound where the door swings over the landing
 * @param swingingAway the limit where it does not
 */
public record EgressDoorDropAtMost(Clause clause, Limit bound, Length swingingAway) implements Bounded {
    @Override
    public String id() {
        return "egress-door-drop-at-most";
    }

    @Override
    public String subject() {
        return "landing below the sill of the required egress door";
    }

    @Override
    public EgressDoorDropAtMost withLimit(Quantity value) {
        return new EgressDoorDropAtMost(clause, bound.with(value), swingingAway);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Doors.findReasonAgainst(stair).orElseGet(() -> judge(stair.site().sights(), limit(stair)));
    }

    private Limit limit(Stair stair) {
        boolean away = stair.site().top().door().orElseThrow() == Landing.Door.SWINGS_AWAY;
        return away && swingingAway.isMoreThan((Length) bound.value()) ? bound.with(swingingAway) : bound;
    }

    private Verdict judge(Sights seen, Limit limit) {
        if (!seen.isSo(Sight.EGRESS_DOOR).orElse(true)) {
            return Verdict.doesNotApply("the door is not the required way out");
        }
        if (seen.length(Sight.SILL_DROP).isEmpty()) {
            return Verdict.cannotTell(
                    Fact.SILL_DROP,
                    "measure from the sill down to the landing: {} at most, if this is the required egress door",
                    limit.value());
        }
        Verdict found = limit.judge(
                seen.length(Sight.SILL_DROP).get(),
                Place.HEAD,
                () -> Phrase.of("raise the landing, or lower the sill"));
        return found instanceof Verdict.Fail && seen.isSo(Sight.EGRESS_DOOR).isEmpty()
                ? Verdict.cannotTell(Fact.EGRESS_DOOR, "say whether the door is the required way out")
                : found;
    }
}
