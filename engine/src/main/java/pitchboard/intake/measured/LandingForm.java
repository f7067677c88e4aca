package pitchboard.intake.measured;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.site.Landing;

/** The level place at one end of the flight. */
final class LandingForm extends GroupForm<Landing> {
    static final String ASKED = "the rules ask for it";

    private static final Key<Optional<Length>> DEPTH =
            Key.open("depth", Bounds.LANDING, "clear length in the direction of travel", ASKED);
    private static final Key<Optional<Length>> WIDTH =
            Key.open("width", Bounds.LANDING, "clear width across it", ASKED);
    private static final Key<Optional<Ratio>> FALL = Key.open("fall", Bounds.FALL, "how much it slopes", ASKED);
    private static final Key<Optional<Landing.Door>> DOOR = Key.open(
            "door",
            ChoiceForm.of("none", Landing.Door.NONE)
                    .or("swings away", Landing.Door.SWINGS_AWAY)
                    .or("swings over the stair", Landing.Door.SWINGS_OVER_STAIR),
            "a door that opens onto this end of the flight",
            ASKED);

    private static final Key<Optional<Length>> CLEAR_OF_DOOR = Key.open(
            "clear of door",
            Forms.lengthOrNone(Bounds.LANDING),
            "level space in the direction of travel that the door leaves before the steps, open or opening",
            ASKED);

    @Override
    public List<Key<?>> keys() {
        return List.of(DEPTH, WIDTH, FALL, DOOR, CLEAR_OF_DOOR);
    }

    @Override
    protected Landing read(Fields in) {
        return new Landing(in.get(DEPTH), in.get(WIDTH), in.get(FALL), in.get(DOOR), in.get(CLEAR_OF_DOOR));
    }

    @Override
    protected void write(Landing value, Lines out) {
        out.put(DEPTH, value.depth());
        out.put(WIDTH, value.width());
        out.put(FALL, value.fall());
        out.put(DOOR, value.door());
        out.put(CLEAR_OF_DOOR, value.clearOfDoor());
    }
}
