package pitchboard.store.library;

import java.util.function.Function;

/** What came of saving. */
public sealed interface Saving {
    /** It is kept as this version, on the disk. */
    record Saved(Version version) implements Saving {}

    /** The newest version says the same already, so nothing was added. */
    record Unchanged(Version version) implements Saving {}

    /** Somebody else saved since: nothing was added, and this is the newest version. */
    record Conflict(Version newest) implements Saving {}

    /** There is no such job, or it has no such version. */
    record Unknown() implements Saving {}

    /** One answer for each; a new one breaks every caller until it is handled. */
    default <T> T match(
            Function<? super Saved, ? extends T> saved,
            Function<? super Unchanged, ? extends T> unchanged,
            Function<? super Conflict, ? extends T> conflict,
            Function<? super Unknown, ? extends T> unknown) {
        if (this instanceof Saved s) {
            return saved.apply(s);
        }
        if (this instanceof Unchanged u) {
            return unchanged.apply(u);
        }
        return this instanceof Conflict c ? conflict.apply(c) : unknown.apply((Unknown) this);
    }
}
