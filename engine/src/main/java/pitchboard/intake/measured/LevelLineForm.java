package pitchboard.intake.measured;

import java.util.List;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.site.Certainty;
import pitchboard.site.Rise;

/** Readings down from a level line over ground that falls or climbs. */
final class LevelLineForm extends GroupForm<Rise.FromLevelLine> {
    private static final Key<List<Rise.Reading>> READINGS = Key.needed(
            "readings",
            Forms.list(new ReadingForm(), 2, 40),
            "at least two, each farther from the header than the one before; straight ground is taken between them, and"
                    + " beyond the last as between the last two");
    private static final Key<Certainty> SURE = MeasuredForm.SURE;

    @Override
    public List<Key<?>> keys() {
        return List.of(READINGS, SURE);
    }

    @Override
    protected Rise.FromLevelLine read(Fields in) {
        List<Rise.Reading> readings = in.get(READINGS);
        if (!moveAway(readings)) {
            if (in.areSound(READINGS)) {
                in.refuse(READINGS, "each reading farther out than the one before");
            }
            readings = STAND_IN;
        }
        return new Rise.FromLevelLine(readings, in.get(SURE));
    }

    private static final List<Rise.Reading> STAND_IN =
            List.of(new Rise.Reading(Length.ZERO, Length.feet(8)), new Rise.Reading(Length.feet(6), Length.feet(8)));

    private static boolean moveAway(List<Rise.Reading> readings) {
        for (int i = 1; i < readings.size(); i++) {
            if (!readings.get(i).distance().isMoreThan(readings.get(i - 1).distance())) {
                return false;
            }
        }
        return true;
    }

    @Override
    protected void write(Rise.FromLevelLine value, Lines out) {
        out.put(READINGS, value.readings());
        out.put(SURE, value.certainty());
    }

    private static final class ReadingForm extends GroupForm<Rise.Reading> {
        private static final Key<Length> OUT =
                Key.needed("out", Bounds.READING_OUT, "level distance from the face of the header");
        private static final Key<Length> DOWN =
                Key.needed("down", Bounds.RISE, "plumb distance from the level line to the ground there");

        @Override
        public List<Key<?>> keys() {
            return List.of(OUT, DOWN);
        }

        @Override
        protected Rise.Reading read(Fields in) {
            return new Rise.Reading(in.get(OUT), in.get(DOWN));
        }

        @Override
        protected void write(Rise.Reading value, Lines out) {
            out.put(OUT, value.distance());
            out.put(DOWN, value.drop());
        }
    }
}
