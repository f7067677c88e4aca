package pitchboard.intake.offers;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Proof;
import pitchboard.intake.form.Shape;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** Lines of a job file, kept as they are written: what they mean is told when they stand in a job. */
final class AsWritten implements Form<Written.Group> {
    @Override
    public Optional<Written.Group> read(Written written, Proof proof) {
        if (written instanceof Written.Group group) {
            return Optional.of(group);
        }
        proof.refuse(written, wanted(Tape.Units.INCHES));
        return Optional.empty();
    }

    @Override
    public Written write(Written.Group value, Tape.Units units) {
        return value;
    }

    @Override
    public String wanted(Tape.Units units) {
        return "lines of a job file, such as " + example(units);
    }

    @Override
    public String example(Tape.Units units) {
        return "{ wanted: { risers: open } }";
    }

    @Override
    public Shape shape() {
        return Shape.ofLines();
    }

    @Override
    public Written.Group standIn() {
        return new Written.Group(Spot.NOWHERE, List.of());
    }
}
