package pitchboard.measure;

import java.util.Optional;
import java.util.function.Function;

/** What came of reading a tape text: a length, or the place where it cannot be one. */
public sealed interface TapeReading {
    record Read(Length length) implements TapeReading {}

    /**
     * Where the text stops being a length, and what would be right there.
     *
     * @param column where the trouble starts, counted from 1
     * @param found the words that stand there; empty when the text ends too early
     * @param expected as a phrase, with what to write instead when that is plain
     */
    record Unread(int column, String found, String expected) implements TapeReading {
        /** Place, trouble and remedy: {@code column 3: expected ... but found 17/16}. */
        public String sentence() {
            return "column " + column + ": expected " + expected + " but found "
                    + (found.isEmpty() ? "nothing" : found);
        }
    }

    default <T> T match(Function<? super Read, ? extends T> read, Function<? super Unread, ? extends T> unread) {
        return this instanceof Read good ? read.apply(good) : unread.apply((Unread) this);
    }

    /** The length; empty when the text could not be read. */
    default Optional<Length> findLength() {
        return match(read -> Optional.of(read.length()), unread -> Optional.empty());
    }
}
