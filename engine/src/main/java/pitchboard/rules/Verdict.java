package pitchboard.rules;

import java.util.Optional;
import java.util.function.Function;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;

/** What a rule says of a stair. Four answers, never a yes or no. */
public sealed interface Verdict {
    record Pass(Quantity measured, Limit limit) implements Verdict {}

    /**
     * The stair breaks the rule.
     *
     * @param remedy what to do next, in the imperative
     */
    record Fail(Quantity measured, Limit limit, Place where, Phrase remedy) implements Verdict {}

    /**
     * The rule says nothing about this stair.
     *
     * @param because a whole reason, such as {@code the flight has only 3 risers}
     */
    record DoesNotApply(Phrase because) implements Verdict {}

    /**
     * Not enough is known.
     *
     * @param missing what to measure, decide or look at, in the imperative
     * @param unknown what of the job would settle it; empty when nothing that can be written in one does
     */
    record CannotTell(Phrase missing, Optional<Unknown> unknown) implements Verdict {}

    static Verdict doesNotApply(String because, Quantity... quantities) {
        return new DoesNotApply(Phrase.of(because, quantities));
    }

    static Verdict cannotTell(String missing, Quantity... quantities) {
        return new CannotTell(Phrase.of(missing, quantities), Optional.empty());
    }

    static Verdict cannotTell(Fact fact, String missing, Quantity... quantities) {
        return new CannotTell(Phrase.of(missing, quantities), Optional.of(Unknown.of(fact)));
    }

    static Verdict cannotTell(Fact fact, Phrase missing) {
        return new CannotTell(missing, Optional.of(Unknown.of(fact)));
    }

    /** One answer for each case; a new case breaks every caller until it is handled. */
    default <T> T match(
            Function<Pass, T> pass,
            Function<Fail, T> fail,
            Function<DoesNotApply, T> doesNotApply,
            Function<CannotTell, T> cannotTell) {
        if (this instanceof Pass p) {
            return pass.apply(p);
        }
        if (this instanceof Fail f) {
            return fail.apply(f);
        }
        if (this instanceof DoesNotApply d) {
            return doesNotApply.apply(d);
        }
        return cannotTell.apply((CannotTell) this);
    }
}
