package pitchboard.web.jobs;

import java.util.function.Function;

/** What came of saving a job. */
public sealed interface Saving {
    /**
     * It is kept.
     *
     * @param version the new one, or the newest when nothing had changed
     * @param fresh whether there was anything to keep
     */
    record Done(int version, boolean fresh) implements Saving {}

    /**
     * Somebody else saved in between, so nothing was kept.
     *
     * @param newest what they saved
     * @param base what both began from
     */
    record Behind(Kept newest, Kept base) implements Saving {}

    default <T> T match(Function<Done, T> done, Function<Behind, T> behind) {
        return this instanceof Done good ? done.apply(good) : behind.apply((Behind) this);
    }
}
