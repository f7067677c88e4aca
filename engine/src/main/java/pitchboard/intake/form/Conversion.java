package pitchboard.intake.form;

import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/**
 * From one tape to another.
 *
 * @param from what bare numbers count as they stand
 * @param to what lengths are written in
 */
public record Conversion(Tape.Units from, Tape.Units to) {
    /** The length a text says, in whatever range; empty for other text. */
    Optional<Length> findLength(Written written) {
        return written.match(
                text -> Proof.begin().in(from).findLength(text, true),
                group -> Optional.empty(),
                sequence -> Optional.empty());
    }
}
