package pitchboard.rules.kinds.surroundings;

import java.util.Optional;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/**
 * A demand that somebody has to look at, because nothing else said of site and brief can tell.
 *
 * @param limit the number in it, when it is one that a tape can measure
 * @param figure the number in it as words, when it is not; may be empty
 */
public record ToLookAt(Matter matter, Clause clause, Optional<Limit> limit, String figure) implements Figured {
    public static ToLookAt of(Matter matter, Clause clause) {
        return new ToLookAt(matter, clause, Optional.empty(), "");
    }

    public static ToLookAt of(Matter matter, Clause clause, Limit limit) {
        return new ToLookAt(matter, clause, Optional.of(limit), "");
    }

    public static ToLookAt of(Matter matter, Clause clause, String figure) {
        return new ToLookAt(matter, clause, Optional.empty(), figure);
    }

    @Override
    public String id() {
        return matter.id();
    }

    @Override
    public String subject() {
        return matter.subject();
    }

    @Override
    public ToLookAt withLimit(Quantity value) {
        return new ToLookAt(matter, clause, limit.map(bound -> bound.with(value)), figure);
    }

    @Override
    public Verdict judge(Stair stair) {
        return matter.when()
                .findReasonAgainst(stair)
                .orElseGet(() -> matter.findLook()
                        .map(look -> look.judge(stair.site().sights(), demand()))
                        .orElseGet(() -> new Verdict.CannotTell(demand().words(), Optional.empty())));
    }

    private Look.Demand demand() {
        return new Look.Demand(
                limit,
                limit.map(bound -> Phrase.of(matter.ask(), bound.value()))
                        .orElseGet(() -> Phrase.of(figure.isEmpty() ? matter.ask() : matter.ask() + ": " + figure)));
    }
}
