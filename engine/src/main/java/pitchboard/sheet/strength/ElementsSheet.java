package pitchboard.sheet.strength;

import java.util.ArrayList;
import java.util.List;
import pitchboard.carry.MemberFinding;
import pitchboard.carry.MemberText;
import pitchboard.carry.SecondLook;
import pitchboard.carry.elements.ByElements;
import pitchboard.measure.Decimals;
import pitchboard.measure.Quantity;
import pitchboard.measure.QuantityText;
import pitchboard.measure.Tape;
import pitchboard.measure.TrueText;
import pitchboard.rules.Rulebook;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;
import pitchboard.strength.Elastic;
import pitchboard.strength.Stress;
import pitchboard.strength.Units;
import pitchboard.strength.elements.MeshStep;

/** The sheet of the second opinion: the stress in one stringer by finite elements, and how it stands to the throat. */
public final class ElementsSheet {
    /** Its name in the set; the elements run only when it is wanted. */
    public static final String ID = "elements";

    private static final String TITLE = "Will it carry? A second opinion";
    private static final double COLUMN = 72;
    private static final double GAP = 6;
    private static final double BETWEEN = 1.8;
    private static final double LEGEND = 27;
    private static final double SAG = 46;
    private static final double SECTION = 40;

    private final SecondLook look;
    private final Tape tape;
    private final Draft draft;
    private final Pencil pencil;
    private final MemberText text;

    private ElementsSheet(Stair stair, SecondLook look, Frame frame) {
        this.look = look;
        this.tape = stair.brief().tape();
        this.draft = frame.draft(ID, TITLE);
        this.pencil = draft.pencil();
        this.text = MemberText.on(tape, Tape.Style.PRINTED);
    }

    /** Takes the second look; ask for the sheet only when it is wanted. */
    public static List<Draft> of(Stair stair, Rulebook book, Frame frame) {
        ElementsSheet sheet = new ElementsSheet(stair, SecondLook.at(stair, book), frame);
        sheet.draw();
        return List.of(sheet.draft);
    }

    private void draw() {
        Box room = draft.room();
        Box right = room.rightPart(COLUMN);
        look.elements()
                .match(found -> picture(room.withoutRight(COLUMN + GAP), right, found), because -> verdict(right));
    }

    private double picture(Box left, Box right, ByElements found) {
        StressDrawing drawing = new StressDrawing(pencil, found, look.units(), tape, left.withoutBottom(LEGEND));
        drawing.draw();
        legend(left.bottomPart(LEGEND), drawing, found);
        double y = verdict(right);
        new SagDrawing(pencil, found).draw(left.topPart(SAG).leftPart(SAG * 1.3));
        y = facts(right.withoutTop(y - right.top() + 2.4), found);
        Box rest = right.withoutTop(y - right.top() + BETWEEN);
        if (found.isBeam() && rest.height() > SECTION) {
            new SectionDrawing(pencil, found, stress -> words(look.units().show(new Stress(stress))))
                    .draw(rest.bottomPart(Math.min(rest.height(), 1.5 * SECTION)));
        }
        return y;
    }

    private double verdict(Box box) {
        MemberFinding finding = look.finding();
        String head = finding.verdict()
                .match(
                        pass -> "It agrees with the throat",
                        fail -> "It DISAGREES with the throat",
                        not -> "Not to be compared",
                        cannot -> look.elements()
                                .match(found -> "It DISAGREES with the throat", because -> "It cannot be told"));
        double y = box.top() + Lettering.NAME.capHeight();
        pencil.text(Spot.of(box.left(), y), head, Lettering.NAME, Align.LEFT);
        y = paragraph(box, y + 2, capital(text.words(finding.words())) + ".");
        String next = text.next(finding);
        return next.isEmpty() ? y : paragraph(box, y + BETWEEN, "**" + capital(next) + ".**");
    }

    private double paragraph(Box box, double top, String words) {
        return pencil.paragraph(Spot.of(box.left(), top), box.width(), words, Lettering.NOTE);
    }

    private static String capital(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private double facts(Box box, ByElements found) {
        double y = box.top();
        for (String fact : facts(found)) {
            y = paragraph(box, y, "• " + fact) + BETWEEN;
        }
        return y;
    }

    private List<String> facts(ByElements found) {
        List<String> facts = new ArrayList<>();
        double part = found.sagPart();
        if (found.isBeam()) {
            facts.add("Sag: **" + mm(found.sagMm()) + "** by finite elements; "
                    + mm(found.instant().throatMm() * part) + " by the throat as a plain beam on the same supports"
                    + found.instant()
                            .ruleMm()
                            .match(rule -> "; " + mm(rule * part) + " by the compact rule.", because -> "."));
            facts.add("It is as stiff as a plain board **" + mm(found.throat().equivalentDepthMm()) + "** deep.");
        }
        facts.add("Most stretched along the grain, away from corners: **"
                + words(look.units().show(new Stress(found.tension().mpa().value()))) + "**"
                + (found.isBeam()
                        ? ", " + Decimals.fixed(found.throat().stressRatio() * 100, 0)
                                + " % of the throat's bending stress."
                        : "."));
        if (found.overPost()) {
            facts.add(
                    "It is taken to run on over its post, where the cut edge is stretched. In case that edge opens, the"
                            + " check of the throat also has it end there. The compact rule says nothing of it.");
        }
        facts.add(mesh(found));
        facts.add(wood(found.wood()));
        facts.add(
                "Clear wood, elastic: no knots, no slip, no help from treads. It stands **beside** the check of the throat,"
                        + " never in its place. A crack at a corner is a matter of its own. The word of a licensed engineer goes"
                        + " before it.");
        return facts;
    }

    private String mesh(ByElements found) {
        StringBuilder words = new StringBuilder("Meshes of six-node triangles, each cut in four for the next: ");
        for (MeshStep step : found.solved().meshes()) {
            words.append(step.triangles())
                    .append(" (")
                    .append(step.unknowns())
                    .append(" unknowns) sag ")
                    .append(mm(step.fallMm() * found.sagPart()))
                    .append("; ");
        }
        boolean settled = found.solved().fallMm().settled();
        return words.append(settled ? "they lead to " : "they do not settle, told is ")
                .append(mm(found.sagMm()))
                .append(", ")
                .append(Decimals.fixed(found.solved().fallMm().uncertain() * 100, 1))
                .append(" % from the finest.")
                .toString();
    }

    private String wood(Elastic wood) {
        Units units = look.units();
        String caution = wood.source().confidence().caution();
        return "Stiffness along the grain " + words(units.show(wood.along())) + ", across "
                + Decimals.fixed(wood.across().over(wood.along()) * 100, 1) + " % of it, in shear "
                + Decimals.fixed(wood.shear().over(wood.along()) * 100, 1) + " %: " + wood.of() + " ("
                + wood.source().citation() + (caution.isEmpty() ? "" : "; " + caution) + ").";
    }

    private String mm(double mm) {
        return TrueText.write(Units.near(mm), tape, Tape.Style.PRINTED);
    }

    private String words(Quantity quantity) {
        return QuantityText.write(quantity, tape, Tape.Style.PRINTED);
    }

    private void legend(Box box, StressDrawing drawing, ByElements found) {
        new StressLegend(pencil, drawing.hatching(), value -> words(look.units().show(new Stress(value))))
                .draw(box, "within " + mm(found.solved().awayMm()) + " of a sharp corner no stress is told");
    }
}
