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
    Optional<Limit> limit();

    /** The same rule with another limit, for a local change; only called when {@link #limit} has a value. */
    Rule withLimit(Quantity value);

    /** Whether another number of risers or another run could change the verdict; such rules choose the stair. */
    boolean shapesTheFlight();

    /** The measurements the verdict rests on; while one of them is unsure, a pass is no pass. */
    List<Reading> restsOn();

    /** The measurements a verdict can rest on. */
    enum Reading {
        RISE,
        RUN_AVAILABLE,
        OVERHEAD
    }
}
