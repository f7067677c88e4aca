package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Posts;
import pitchboard.brief.Section;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The posts of the guard. */
final class PostsForm extends GroupForm<Posts> {
    private enum Kind {
        LAPPED,
        NOTCHED,
        SET_ON
    }

    private static final Key<Length> WIDTH =
            Key.needed("width", Bounds.POST_SECTION, "of a post, along the flight, as it measures");
    private static final Key<Length> THICKNESS =
            Key.needed("thickness", Bounds.POST_SECTION, "of a post, across the flight, as it measures");
    private static final Key<Length> SPACING = Key.needed(
            "greatest spacing", Bounds.POST_SPACING, "level, from the middle of one post to the middle of the next");
    private static final Key<Kind> FIXING = Key.needed(
            "fixing",
            ChoiceForm.of("lapped", Kind.LAPPED).or("notched", Kind.NOTCHED).or("set on", Kind.SET_ON),
            "lapped: against the outer face of the outer stringer; notched: over the stringer, with a notch in the"
                    + " post; set on: on the tread");
    private static final Key<Optional<Length>> NOTCH = Key.open(
            "notch",
            Bounds.BOARD_THICKNESS,
            "how deep a notched post is cut out over the stringer",
            "with notched posts it must be there");
    private static final Key<Optional<Length>> BEHIND = Key.open(
            "behind nosing",
            Forms.lengthOrNone(Bounds.BEHIND_NOSING),
            "from the nosing back to the front of the post, on every step alike",
            "the post stands over the middle of the run");
    private static final Key<Posts.Top> TOP = Key.defaulting(
            "top",
            ChoiceForm.of("square", Posts.Top.SQUARE).or("under the rail", Posts.Top.UNDER_RAIL),
            "square: the top rail is fitted between the posts; under the rail: the tops are cut to the slope and the"
                    + " top rail runs over them",
            "square",
            units -> Posts.Top.SQUARE);

    @Override
    public List<Key<?>> keys() {
        return List.of(WIDTH, THICKNESS, SPACING, FIXING, NOTCH, BEHIND, TOP);
    }

    @Override
    protected Posts read(Fields in) {
        Section section = new Section(in.get(THICKNESS), in.get(WIDTH));
        return new Posts(section, in.get(SPACING), fixing(in, section), in.get(BEHIND), in.get(TOP));
    }

    private static Posts.Fixing fixing(Fields in, Section section) {
        Kind kind = in.get(FIXING);
        if (kind == Kind.NOTCHED && in.areSound(FIXING)) {
            Length depth = in.demand(NOTCH, "with notched posts");
            if (depth.isAtLeast(section.thickness()) && in.areSound(NOTCH, THICKNESS)) {
                in.refuse(NOTCH, "less than the thickness of the post");
            }
            return new Posts.Fixing.Notched(depth);
        }
        if (in.areSound(FIXING)) {
            in.forbid(NOTCH, "with posts that are not notched");
        }
        return kind == Kind.SET_ON ? new Posts.Fixing.SetOn() : new Posts.Fixing.Lapped();
    }

    @Override
    protected void write(Posts value, Lines out) {
        out.put(WIDTH, value.section().width());
        out.put(THICKNESS, value.section().thickness());
        out.put(SPACING, value.greatestSpacing());
        if (value.fixing() instanceof Posts.Fixing.Notched notched) {
            out.put(FIXING, Kind.NOTCHED);
            out.put(NOTCH, Optional.of(notched.depth()));
        } else {
            out.put(FIXING, value.fixing() instanceof Posts.Fixing.SetOn ? Kind.SET_ON : Kind.LAPPED);
        }
        out.put(BEHIND, value.behindNosing());
        out.put(TOP, value.top());
    }
}
