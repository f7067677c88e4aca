package pitchboard.rules;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Quantity;
import pitchboard.source.Clause;

/**
 * A circumstance that a clause makes a rule depend on: from when on it holds, or when it lets one off.
 *
 * @param id stable name, such as {@code nosing-waiver-run}; a local change can name it
 * @param words what it is about, such as {@code run from which no nosing is owed}
 * @param limit the number in it, the proviso being met on this side of it; empty when it has none
 */
public record Proviso(String id, String words, Clause clause, Optional<Limit> limit) {
    public static Proviso of(String id, String words, Clause clause, Limit limit) {
        return new Proviso(id, words, clause, Optional.of(limit));
    }

    public static Proviso of(String id, String words, Clause clause) {
        return new Proviso(id, words, clause, Optional.empty());
    }

    /** Whether the value is on the side where the proviso is met; a proviso without a number always is. */
    public boolean isMetBy(Quantity value) {
        return limit.map(bound -> bound.admits(value)).orElse(true);
    }

    public Proviso withLimit(Quantity value) {
        return new Proviso(id, words, clause, limit.map(bound -> bound.with(value)));
    }

    public static Optional<Proviso> find(List<Proviso> provisos, String id) {
        for (Proviso proviso : provisos) {
            if (proviso.id.equals(id)) {
                return Optional.of(proviso);
            }
        }
        return Optional.empty();
    }
}
