package pitchboard.sheet.pictures;

import java.util.stream.Stream;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.parts.PartId;
import pitchboard.parts.RunningMark;
import pitchboard.parts.SideView;
import pitchboard.parts.StringerLayout;
import pitchboard.plane.Outline;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Typesetter;

/**
 * A stringer lying on its board with the datum at the left; every running mark is a group of its own. As long as its
 * marks need: on a phone it is scrolled sideways.
 */
final class StringerPicture {
    private static final Lettering LETTERING = StairSizes.LETTERING;
    /** From mark to mark on the picture, so that a thumb can tell them apart. */
    private static final double STEP = 13;

    private static final double NARROWEST = 100;
    private static final double BESIDE = 7;
    private static final double STROKE = 3.4;
    private static final double TO_LABEL = 1.2;
    private static final double LABELS_APART = 4.8;

    private final Subject subject;
    private final StringerLayout layout;
    private final View view;
    private final Canvas canvas;

    private StringerPicture(Subject subject) {
        this.subject = subject;
        this.layout = StringerLayout.of(subject.stair());
        View life = View.of(new Scale("", STEP / layout.stepAlongEdge().approxMm()), Spot.of(0, 0));
        Box board = life.around(board().corners());
        double above = margin(layout.marks().stream().map(mark -> running(mark.at())));
        double below = margin(Stream.of(heelWords(), headWords()));
        this.view = life.movedBy(BESIDE - board.left(), above - board.top());
        double width = Math.max(NARROWEST, board.width() + 2 * BESIDE);
        this.canvas = new Canvas(
                Pictures.STRINGER, "The stringer on its board", new Box(0, 0, width, above + board.height() + below));
    }

    static Picture of(Subject subject) {
        StringerPicture picture = new StringerPicture(subject);
        picture.draw();
        return picture.canvas.picture();
    }

    /** Room for the longest label, which stands upright. */
    private static double margin(Stream<String> labels) {
        double longest = labels.mapToDouble(words -> Typesetter.width(words, LETTERING))
                .max()
                .orElse(0);
        return STROKE + TO_LABEL + longest + 2;
    }

    private Outline board() {
        Length trim = subject.stair().brief().stringers().trim();
        return SideView.rectangle(
                trim.negated(), depth().negated(), layout.extent().plus(trim), Length.ZERO);
    }

    private Length depth() {
        return layout.shape().boardDepth();
    }

    private String running(Marked mark) {
        return subject.running(mark.line());
    }

    private String heelWords() {
        return "heel " + running(layout.heelMark());
    }

    private String headWords() {
        return "head " + running(layout.headMark());
    }

    private void draw() {
        canvas.part(PartId.STRINGER.mark(), () -> {
            pencil().outline(Pen.THIN, view.at(board()));
            pencil().outline(Pen.CUT, Fill.LIGHT, view.at(layout.outline()));
        });
        canvas.plain(this::datum);
        layout.marks().forEach(this::corner);
        double datum = view.at(Length.ZERO, Length.ZERO).x();
        double heel = Math.max(at(layout.heelMark()), datum + LABELS_APART / 2);
        double head = Math.max(at(layout.headMark()), heel + LABELS_APART);
        canvas.group(Picture.Kind.MARK, "heel", () -> below(layout.heelMark(), heel, heelWords()));
        canvas.group(Picture.Kind.MARK, "head", () -> below(layout.headMark(), head, headWords()));
    }

    private Pencil pencil() {
        return canvas.pencil();
    }

    private double at(Marked mark) {
        return view.at(mark.exact(), Length.ZERO).x();
    }

    /** The line that all marks are measured from, squared across the board. */
    private void datum() {
        Spot top = view.at(Length.ZERO, Length.ZERO);
        Spot bottom = view.at(Length.ZERO, depth().negated());
        pencil().line(Pen.CENTRE, top.shifted(0, -STROKE), bottom.shifted(0, STROKE));
        upright(bottom.shifted(-TO_LABEL - LETTERING.capHeight() / 2, STROKE + TO_LABEL), "datum", Align.RIGHT);
    }

    /** Its number stands in the wood under the corner. */
    private void corner(RunningMark mark) {
        canvas.group(Picture.Kind.MARK, Integer.toString(mark.step()), () -> {
            Spot on = view.at(mark.at().exact(), Length.ZERO);
            pencil().line(Pen.PENCIL, on, on.shifted(0, -STROKE));
            upright(on.shifted(0, -STROKE - TO_LABEL), running(mark.at()), Align.LEFT);
            Spot inside = on.shifted(0, 0.37 * view.onPaper(depth()) + LETTERING.capHeight() / 2);
            pencil().text(inside, Integer.toString(mark.step()), LETTERING.bold(), Align.CENTRE);
        });
    }

    /** A stroke on the bottom edge, its label moved aside where another one is near. */
    private void below(Marked mark, double label, String words) {
        Spot on = view.at(mark.exact(), depth().negated());
        pencil().line(Pen.PENCIL, on, on.shifted(0, STROKE));
        upright(Spot.of(label, on.y() + STROKE + TO_LABEL), words, Align.RIGHT);
    }

    /** A label that reads upward, its middle over the spot. */
    private void upright(Spot at, String words, Align align) {
        pencil().text(at.shifted(LETTERING.capHeight() / 2, 0), 90, words, LETTERING, align);
    }
}
