package pitchboard.strength;

import java.util.function.Function;

/** A value, or why there is none: a formula that does not reach, or a table without that row. Never a nearest value. */
public sealed interface Answer<T> {
    record Known<T>(T value) implements Answer<T> {}

    /**
     * Nothing can be told.
     *
     * @param because a whole reason, with what would be right
     */
    record Unknown<T>(String because) implements Answer<T> {}

    static <T> Answer<T> known(T value) {
        return new Known<>(value);
    }

    static <T> Answer<T> unknown(String because) {
        return new Unknown<>(because);
    }

    default <R> R match(Function<T, R> known, Function<String, R> unknown) {
        return this instanceof Known<T> found
                ? known.apply(found.value())
                : unknown.apply(((Unknown<T>) this).because());
    }

    default <R> Answer<R> map(Function<T, R> change) {
        return match(value -> known(change.apply(value)), Answer::unknown);
    }

    default <R> Answer<R> then(Function<T, Answer<R>> next) {
        return match(next, Answer::unknown);
    }

    /**
     * The value, where the caller knows that there is one.
     *
     * @throws IllegalStateException when there is none, with the reason
     */
    default T orThrow() {
        return match(value -> value, because -> {
            throw new IllegalStateException(because);
        });
    }
}
