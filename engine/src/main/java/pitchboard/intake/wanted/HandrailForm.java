package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Handrail;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The handrails that are wanted. */
final class HandrailForm extends GroupForm<Handrail> {
    private static final String ASKED = "undecided: the rules ask for it";

    private static final Key<Handrail.Sides> SIDES = Key.needed(
            "sides",
            ChoiceForm.of("left", Handrail.Sides.LEFT)
                    .or("right", Handrail.Sides.RIGHT)
                    .or("both", Handrail.Sides.BOTH)
                    .or("none", Handrail.Sides.NONE),
            "on which sides of someone climbing a rail is wanted");
    private static final Key<Optional<Length>> HEIGHT =
            Key.open("height", Bounds.RAIL_HEIGHT, "top of the rail, plumb above the line of the nosings", ASKED);
    private static final Key<Optional<Handrail.Grip>> GRIP =
            Key.open("grip", new GripForm(), "the section that a hand closes on", ASKED);
    private static final Key<Optional<Length>> REACH =
            Key.open("reaches in", Bounds.RAIL_REACH, "how far rail and brackets stand into the width", ASKED);
    private static final Key<Optional<Length>> WALL_GAP =
            Key.open("gap to wall", Bounds.RAIL_REACH, "clear space between rail and wall", ASKED);
    private static final Key<Optional<Boolean>> FULL_LENGTH = Key.open(
            "full length",
            Forms.yesOrNo(),
            "whether it runs from above the lowest riser to above the top riser, with its ends returned",
            ASKED);
    private static final Key<Optional<Length>> BRACKETS = Key.open(
            "brackets", Bounds.BRACKETS, "the most that brackets on a wall are to be apart, middle to middle", ASKED);
    private static final Key<Length> PAST_FOOT = past(
            "past the foot", "how far it goes on before the lowest nosing, measured level, at the slope of the flight");
    private static final Key<Length> PAST_HEAD = past("past the head", "how far it goes on level behind the top riser");

    private static Key<Length> past(String name, String meaning) {
        return Key.defaulting(
                name, Forms.lengthOrNone(Bounds.RAIL_PAST), meaning, "it ends there", units -> Length.ZERO);
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(SIDES, HEIGHT, GRIP, REACH, WALL_GAP, FULL_LENGTH, BRACKETS, PAST_FOOT, PAST_HEAD);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(SIDES);
    }

    @Override
    protected Handrail read(Fields in) {
        return new Handrail(
                in.get(SIDES),
                in.get(HEIGHT),
                in.get(GRIP),
                in.get(REACH),
                in.get(WALL_GAP),
                in.get(FULL_LENGTH),
                in.get(BRACKETS),
                new Handrail.Past(in.get(PAST_FOOT), in.get(PAST_HEAD)));
    }

    @Override
    protected void write(Handrail value, Lines out) {
        out.put(SIDES, value.sides());
        out.put(HEIGHT, value.height());
        out.put(GRIP, value.grip());
        out.put(REACH, value.projection());
        out.put(WALL_GAP, value.clearance());
        out.put(FULL_LENGTH, value.fullLength());
        out.put(BRACKETS, value.brackets());
        out.put(PAST_FOOT, value.past().foot());
        out.put(PAST_HEAD, value.past().head());
    }
}
