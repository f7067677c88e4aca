package pitchboard.sheet.strength;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.brief.Support;
import pitchboard.carry.Carried;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.QuantityText;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.parts.Worksheet;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Station;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.source.Figure;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** One stringer as the beam it is taken for: the load over its plan, what each end bears, and the wood that bends. */
final class LoadPicture {
    private static final double HEAD = 2.4;
    private static final double ARROWS = 14;
    private static final double REACTION = 13;
    private static final double ABOVE = 24;
    private static final double BELOW = 34;
    private static final double ASIDE = 16;

    private final Pencil pencil;
    private final Stair stair;
    private final Carried carried;
    private final Tape tape;

    LoadPicture(Draft draft, Stair stair, Carried carried) {
        this.pencil = draft.pencil();
        this.stair = stair;
        this.carried = carried;
        this.tape = stair.brief().tape();
    }

    /** Returns how far down it reaches. */
    double draw(Box box) {
        StringerShape shape = new StringerShape(stair);
        List<Point> outline = shape.outline().corners();
        Box room = box.withoutTop(ABOVE).withoutBottom(BELOW).inset(ASIDE, 0);
        View view = fitting(room, outline);
        pencil.outline(Pen.OUTLINE, Fill.LIGHT, view.at(outline));
        throat(view, shape);
        double top = view.around(outline).top() - 6;
        Spot foot = view.at(Point.of(Length.ZERO, stair.seat()));
        Spot head = view.at(shape.headBottom());
        load(foot.x(), view.at(shape.headTop()).x(), top);
        double under = Math.max(foot.y(), head.y());
        reaction(foot, "R");
        reaction(head, stair.brief().support().isPresent() ? "Rh" : "R");
        stair.brief().support().map(Support::at).ifPresent(at -> reaction(view.at(at, shape.bottomEdge(at)), "Rs"));
        span(view, under + REACTION + 9);
        pencil.text(
                Spot.of(box.centre().x(), box.bottom() - 1), "One stringer as a beam", Lettering.NAME, Align.CENTRE);
        return box.bottom();
    }

    /** As large as there is room for: nobody scales off a diagram. */
    private static View fitting(Box room, List<Point> outline) {
        Box life = View.of(Scale.TRUE_SIZE, Spot.of(0, 0)).around(outline);
        double largest = Math.min(room.width() / life.width(), room.height() / life.height());
        return View.of(new Scale("not to scale", largest), Spot.of(0, 0)).centredIn(room, outline);
    }

    /** Where the stringer bends: the wood left under the step nearest the middle. */
    private void throat(View view, StringerShape shape) {
        int step = Math.max(1, (stair.treads() + 1) / 2);
        Point inner = Point.of(stair.riserCut(step + 1), stair.levelCut(step));
        if (step >= stair.treads()) {
            return;
        }
        Length along = stair.pitch().sinTimes(shape.throat());
        Point edge = inner.shifted(along, stair.pitch().cosTimes(shape.throat()).negated());
        pencil.line(Pen.CUT, view.at(inner), view.at(edge));
        String words = TapeWriter.write(shape.throat(), tape, Tape.Style.PRINTED) + " bends";
        pencil.text(view.at(inner).shifted(-5, -7), words, Lettering.DIMENSION, Align.RIGHT);
    }

    /** A row of arrows over the plan of the flight. */
    private void load(double left, double right, double bottom) {
        double top = bottom - ARROWS;
        pencil.line(Pen.PENCIL, Spot.of(left, top), Spot.of(right, top));
        int count = Math.max(2, (int) ((right - left) / 9));
        for (int i = 0; i <= count; i++) {
            double x = left + (right - left) * i / count;
            arrow(Spot.of(x, top), Spot.of(x, bottom));
        }
        find("w")
                .ifPresent(w -> pencil.text(
                        Spot.of((left + right) / 2, top - 2),
                        "w = " + words(w) + " over the plan: people and the stair's weight",
                        Lettering.DIMENSION,
                        Align.CENTRE));
    }

    private void reaction(Spot at, String symbol) {
        Spot from = at.shifted(0, REACTION);
        arrow(from, at.shifted(0, 1));
        find(symbol)
                .ifPresent(value -> pencil.text(
                        from.shifted(0, 3.6), symbol + " = " + words(value), Lettering.DIMENSION, Align.CENTRE));
    }

    private void arrow(Spot from, Spot to) {
        pencil.line(Pen.PENCIL, from, to);
        double back = to.directionTo(from);
        pencil.fill(Fill.BLACK, List.of(to, to.toward(back - 14, HEAD), to.toward(back + 14, HEAD)));
    }

    private void span(View view, double y) {
        Length face = stair.headerFace();
        Station[] stations = Stream.of(
                        Stream.of(Length.ZERO), stair.brief().support().map(Support::at).stream(), Stream.of(face))
                .flatMap(each -> each)
                .map(x -> Station.of(x, Spot.of(view.at(x, Length.ZERO).x(), y - 3)))
                .toArray(Station[]::new);
        new Dimensions(pencil, length -> TapeWriter.write(length, tape, Tape.Style.PRINTED)).level(y, stations);
    }

    private Optional<Quantity> find(String symbol) {
        return carried.worksheet().stream()
                .map(Worksheet.Section::figures)
                .flatMap(List::stream)
                .filter(figure -> figure.symbol().equals(symbol))
                .map(Figure::value)
                .findFirst();
    }

    private String words(Quantity quantity) {
        return QuantityText.write(quantity, tape, Tape.Style.PRINTED);
    }
}
