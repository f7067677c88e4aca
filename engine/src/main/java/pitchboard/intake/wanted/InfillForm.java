package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Infill;
import pitchboard.brief.Section;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** What closes the guard between posts and rails. */
final class InfillForm extends GroupForm<Infill> {
    private enum Kind {
        BALUSTERS,
        BOARDS,
        PANELS
    }

    private static final String NOT_PANELS = "with balusters and boards it must be there";

    private static final ChoiceForm<Kind> KINDS = ChoiceForm.of("balusters", Kind.BALUSTERS)
            .or("level boards", Kind.BOARDS)
            .or("panels", Kind.PANELS);
    private static final Key<Kind> KIND = Key.needed(
            "kind",
            KINDS,
            "balusters: plumb, between the rails; level boards: they run with the rails, one above the other;"
                    + " panels: solid");
    private static final Key<Length> THICKNESS =
            Key.needed("thickness", Bounds.INFILL_SECTION, "of a baluster, board or panel, across the flight");
    private static final Key<Optional<Length>> WIDTH =
            Key.open("width", Bounds.INFILL_SECTION, "of a baluster or board, as it is seen from the side", NOT_PANELS);
    private static final Key<Optional<Length>> BALL =
            Key.open("ball", Bounds.BALL, "that must not pass between two balusters or boards", NOT_PANELS);

    @Override
    public List<Key<?>> keys() {
        return List.of(KIND, THICKNESS, WIDTH, BALL);
    }

    @Override
    protected Infill read(Fields in) {
        Kind kind = in.get(KIND);
        Length thickness = in.get(THICKNESS);
        if (!in.areSound(KIND)) {
            return new Infill.Panels(thickness);
        }
        String with = "with " + KINDS.word(kind);
        if (kind == Kind.PANELS) {
            in.forbid(WIDTH, with);
            in.forbid(BALL, with);
            return new Infill.Panels(thickness);
        }
        Section section = new Section(thickness, in.demand(WIDTH, with));
        Length ball = in.demand(BALL, with);
        return kind == Kind.BALUSTERS ? new Infill.Balusters(section, ball) : new Infill.Boards(section, ball);
    }

    @Override
    protected void write(Infill value, Lines out) {
        if (value instanceof Infill.Balusters balusters) {
            write(Kind.BALUSTERS, balusters.section(), balusters.ball(), out);
        } else if (value instanceof Infill.Boards boards) {
            write(Kind.BOARDS, boards.section(), boards.ball(), out);
        } else if (value instanceof Infill.Panels panels) {
            out.put(KIND, Kind.PANELS);
            out.put(THICKNESS, panels.thickness());
        }
    }

    private static void write(Kind kind, Section section, Length ball, Lines out) {
        out.put(KIND, kind);
        out.put(THICKNESS, section.thickness());
        out.put(WIDTH, Optional.of(section.width()));
        out.put(BALL, Optional.of(ball));
    }
}
