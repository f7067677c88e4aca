package pitchboard.sheet.pictures;

import java.util.List;
import java.util.stream.IntStream;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.SizeLine;
import pitchboard.sheet.drafting.SizeLine.Toward;
import pitchboard.sheet.drafting.Station;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.subject.OverheadPicture;
import pitchboard.sheet.subject.SidePicture;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Typesetter;
import pitchboard.stair.Headroom;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** The sizes in the picture of a stair, the weightiest first: a later one that finds no room is left out. */
final class StairSizes {
    static final Lettering LETTERING = Lettering.ofCapitals(3.2);

    /** As wide as a thumb needs (44 CSS px) on a screen of 390 CSS px. */
    private static final double TAP = 11.3;

    private static final double STRING = 7.4;
    private static final double NEXT_STRING = 9.6;
    private static final double UNDER_STRINGS = 3.6;
    private static final double BESIDE_STEP = 2.6;
    static final double RISE_BEHIND_FACE = 13.5;

    private final Subject subject;
    private final Stair stair;
    private final StairView place;
    private final View view;
    private final Canvas canvas;
    private final SizeLine sizes;
    private final SizeLine strings;

    StairSizes(Subject subject, StairView place, Canvas canvas) {
        this.subject = subject;
        this.stair = subject.stair();
        this.place = place;
        this.view = place.view();
        this.canvas = canvas;
        Box room = canvas.draft().room();
        this.sizes = new SizeLine(canvas.pencil(), LETTERING, room.topPart(bottom() - room.top()));
        this.strings = new SizeLine(canvas.pencil(), LETTERING, room);
    }

    /** How much of the page the sizes below the stair take up. */
    static double below(Stair stair) {
        return STRING + UNDER_STRINGS + (stair.site().runAvailable().isPresent() ? NEXT_STRING : 0);
    }

    void draw() {
        size(Fields.rise(stair.site()), this::totalRise);
        size(stair.site().runAvailable().isPresent() ? Fields.NONE : Fields.SPACE, this::totalRun);
        size(Fields.SPACE, () -> stair.site().runAvailable().ifPresent(space -> space(space.value())));
        size(Fields.RISERS, this::rise);
        size(Fields.RUN, this::run);
        stair.headroom()
                .filter(tightest -> OverheadPicture.drawnUnderside(stair).isPresent())
                .ifPresent(tightest -> size(Fields.underside(number(tightest)), () -> headroom(tightest)));
        size(Fields.HEADER_DEPTH, this::headerDepth);
        size(Fields.BOARD_DEPTH, this::boardDepth);
        size(Fields.RAIL, () -> place.railLine().ifPresent(line -> height("rail", line)));
        size(Fields.GUARD, () -> place.guardLine().ifPresent(line -> height("guard", line)));
    }

    private void size(String field, Runnable drawing) {
        canvas.size(field, TAP, drawing);
    }

    private String words(String what, Length size) {
        return what + " " + subject.size(size);
    }

    private int number(Headroom tightest) {
        return stair.site().overheads().indexOf(tightest.overhead());
    }

    /** Behind the header, where nothing else is drawn; a low flight has its label over the floor. */
    private void totalRise() {
        double x = view.at(stair.headerFace(), Length.ZERO).x() + RISE_BEHIND_FACE;
        Length climb = stair.flight().totalRise();
        Station ground = Station.of(
                Length.ZERO, Spot.of(x, view.at(Length.ZERO, Length.ZERO).y()));
        Station floor = Station.of(climb, Spot.of(x, view.at(Length.ZERO, climb).y()));
        String words = words("total rise", climb);
        Spot drawnGround = view.at(new StringerShape(stair).heel().x(), Length.ZERO);
        canvas.pencil().line(Pen.THIN, drawnGround, ground.at());
        if (Typesetter.width(words, LETTERING) + 8 < ground.at().distanceTo(floor.at())) {
            sizes.plumb(x, ground, floor, words);
        } else {
            sizes.draw(ground, floor, words, List.of(Toward.LEFT_ABOVE, Toward.LEFT_BELOW, Toward.LEFT));
        }
    }

    private double bottom() {
        return place.body().bottom();
    }

    private Station below(Length x, double y) {
        return Station.of(x, Spot.of(view.at(x, Length.ZERO).x(), y));
    }

    private void totalRun() {
        Length face = stair.headerFace();
        Length front = face.minus(stair.spaceTaken());
        canvas.pencil()
                .line(
                        Pen.THIN,
                        view.at(face, new StringerShape(stair).headerBottom()),
                        below(face, bottom()).at());
        double y = bottom() + STRING;
        strings.draw(
                below(front, bottom()),
                below(front, y).at(),
                below(face, bottom()),
                below(face, y).at(),
                words("total run", stair.spaceTaken()),
                List.of(Toward.ABOVE, Toward.RIGHT, Toward.LEFT));
    }

    /** What is longer than the page is wide goes on past its edge, as an arrow says. */
    private void space(Length space) {
        Length face = stair.headerFace();
        Length far = face.minus(space);
        double y = bottom() + STRING + NEXT_STRING;
        Spot end = below(far, y).at();
        String words = words("space", space);
        if (end.x() > 4) {
            Station near = Station.of(face, below(face, bottom() + STRING).at());
            Station limit = Station.of(far, Spot.of(end.x(), bottom()));
            strings.draw(
                    limit, end, near, below(face, y).at(), words, List.of(Toward.ABOVE, Toward.RIGHT, Toward.LEFT));
            return;
        }
        Spot tip = Spot.of(3, y);
        Spot start = below(face, y).at();
        canvas.pencil().line(Pen.DIMENSION, start.shifted(0, -NEXT_STRING), start.shifted(0, 2));
        canvas.pencil().line(Pen.DIMENSION, start, tip);
        canvas.pencil().fill(Fill.BLACK, List.of(tip, tip.shifted(3, -1), tip.shifted(3, 1)));
        canvas.pencil().text(tip.midTo(start).shifted(0, -1.1), words, LETTERING, Align.CENTRE);
    }

    /** The step in the middle, whose rise and run are shown. */
    static int step(Stair stair) {
        return Math.max(1, stair.treads() / 2);
    }

    private Point nosing() {
        return stair.nosing(step(stair));
    }

    /** From the nosing of a step in the middle to the next; of a single step, from the ground. */
    private void rise() {
        Point lower = stair.treads() > 1
                ? nosing()
                : nosing().shifted(Length.ZERO, stair.rise().negated());
        Point upper = stair.treads() > 1 ? stair.nosing(step(stair) + 1) : nosing();
        double x = view.at(lower).x() - BESIDE_STEP;
        sizes.draw(
                view.plumb(lower),
                Spot.of(x, view.at(lower).y()),
                view.plumb(upper),
                Spot.of(x, view.at(upper).y()),
                words("rise", stair.rise()),
                List.of(Toward.LEFT, Toward.LEFT_ABOVE, Toward.LEFT_BELOW));
    }

    private void run() {
        Point front = nosing();
        Point back = front.shifted(stair.run(), stair.treads() > 1 ? stair.rise() : Length.ZERO);
        double y = view.at(back).y() - BESIDE_STEP;
        sizes.draw(
                view.level(front),
                Spot.of(view.at(front).x(), y),
                view.level(back),
                Spot.of(view.at(back).x(), y),
                words("run", stair.run()),
                List.of(Toward.ABOVE, Toward.LEFT_ABOVE, Toward.RIGHT_ABOVE));
    }

    private void headroom(Headroom tightest) {
        Point under = tightest.at().shifted(Length.ZERO, tightest.clear());
        sizes.draw(
                view.plumb(tightest.at()),
                view.plumb(under),
                words("headroom", tightest.clear()),
                List.of(Toward.RIGHT, Toward.LEFT, Toward.RIGHT_ABOVE, Toward.LEFT_ABOVE, Toward.LEFT_BELOW));
    }

    private void headerDepth() {
        StringerShape shape = new StringerShape(stair);
        Length back = stair.headerFace().plus(SidePicture.HEADER_THICKNESS);
        Point low = Point.of(back, shape.headerBottom());
        Point high = Point.of(back, shape.headerTop());
        double x = view.at(low).x() + 2.6;
        sizes.draw(
                view.plumb(low),
                Spot.of(x, view.at(low).y()),
                view.plumb(high),
                Spot.of(x, view.at(high).y()),
                words("header", stair.site().head().depth()),
                List.of(Toward.RIGHT, Toward.ABOVE, Toward.RIGHT_ABOVE, Toward.BELOW, Toward.LEFT_BELOW));
    }

    /** Square across the board from the corner of a step, where the board is whole. */
    private void boardDepth() {
        StringerShape shape = new StringerShape(stair);
        Length depth = shape.boardDepth();
        IntStream.rangeClosed(1, stair.treads())
                .map(i -> stair.treads() + 1 - i)
                .filter(step -> step <= Math.max(1, stair.treads() * 2 / 3))
                .mapToObj(step -> Point.of(stair.riserCut(step), stair.levelCut(step)))
                .filter(corner -> BoardEdge.isWhole(shape, BoardEdge.across(stair, corner, depth)))
                .findFirst()
                .ifPresent(corner -> sizes.draw(
                        Station.of(Length.ZERO, view.at(corner)),
                        Station.of(depth, view.at(BoardEdge.across(stair, corner, depth))),
                        words("board", depth),
                        List.of(Toward.RIGHT_BELOW, Toward.BELOW, Toward.RIGHT)));
    }

    private void height(String what, List<Point> line) {
        int step = Math.max(1, stair.treads() * 3 / 4);
        Point nosing = stair.nosing(step);
        Length height = line.get(0).y().minus(stair.nosing(1).y());
        sizes.draw(
                view.plumb(nosing),
                view.plumb(nosing.shifted(Length.ZERO, height)),
                words(what, height),
                List.of(Toward.RIGHT, Toward.RIGHT_ABOVE, Toward.LEFT_ABOVE, Toward.LEFT));
    }
}
