package pitchboard.rules;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Quantity;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** One demand of one clause. Immutable; the same stair always gets the same verdict. */
public interface Rule {
    /** Stable name of the kind, such as {@code rise-at-most}; the name of its page in docs/rules. */
    String id();

    /** What is judged, in a few plain words, such as {@code rise of a step}. */
    String subject();

    Clause clause();

    Verdict judge(Stair stair);

    /** The limit a user's own file may change; empty when the rule has none. */
    default Optional<Limit> limit() {
        return Optional.empty();
    }

    /**
     * The same rule with another limit, for a local change.
     *
     * @throws IllegalStateException when {@link #limit} is empty
     */
    default Rule withLimit(Quantity value) {
        throw new IllegalStateException(id() + " has no limit to change to " + value);
    }

    /** What the clause makes this rule depend on. */
    default List<Proviso> provisos() {
        return List.of();
    }

    /**
     * The same rule with other numbers in its provisos, for a local change.
     *
     * @throws IllegalStateException when {@link #provisos} is empty
     */
    default Rule withProvisos(List<Proviso> provisos) {
        throw new IllegalStateException(id() + " has no provisos to change to " + provisos);
    }

    /**
     * Whether the rule has a say in the number of risers and the run. A rule that something else puts right, such as a
     * rail or a riser board, has none.
     */
    default boolean shapesTheFlight() {
        return false;
    }

    /** The measurements the verdict rests on; while one of them is unsure, a pass is no pass. */
    default List<Reading> restsOn() {
        return List.of();
    }
}
