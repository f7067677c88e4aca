package pitchboard.buying.search;

import java.util.List;
import pitchboard.buying.relaxing.Pattern;

/** The ways to go on from a plan begun, one after the other. */
final class Branching {
    private final Rest rest;
    private final List<Pattern> choices;
    private final boolean complete;
    private int next;

    Branching(Rest rest, List<Pattern> choices, boolean complete) {
        this.rest = rest;
        this.choices = choices;
        this.complete = complete;
    }

    boolean hasNext() {
        return next < choices.size();
    }

    Rest next() {
        Rest below = rest.copy();
        below.take(choices.get(next++));
        return below;
    }

    /** Whether there is no other way to go on. */
    boolean isComplete() {
        return complete;
    }
}
