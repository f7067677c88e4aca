package pitchboard.sheet.lessons;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;
import pitchboard.parts.SideView;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.pictures.Canvas;
import pitchboard.site.FootSurface;
import pitchboard.stair.StringerShape;

/** How the flight can meet the floor above and stand on what is below, drawn from sample stairs that do. */
final class EndLessons {
    private static final String FIXING = "wanted > head fixing";
    private static final String FOOT = "wanted > foot";
    private static final Length WIDE = Length.inches(32);
    private static final Length NEAR = Length.inches(17);
    private static final Length WHOLE_HEAD = Length.inches(22);

    private static final HeadFixing HANGER_BOARD =
            new HeadFixing.HangerBoard(Length.inches(1, 1, 2), Length.inches(5, 1, 2));
    private static final HeadFixing LEDGER = new HeadFixing.Ledger(Length.inches(1, 1, 2), Length.inches(3, 1, 2));
    private static final FootDetail SOLE = new FootDetail.SoleBoard(Length.inches(1, 1, 2), Length.inches(11, 1, 4));
    private static final FootDetail KICKER = new FootDetail.Kicker(Length.inches(1, 1, 2), Length.inches(3, 1, 2));

    private EndLessons() {}

    static List<Lesson> all() {
        List<Lesson> all = new ArrayList<>(joins());
        all.addAll(fixings());
        all.addAll(feet());
        all.addAll(surfaces());
        return all;
    }

    private static List<Lesson> joins() {
        return List.of(
                Lesson.of("wanted > head", "one down", join("The floor is the last step", HeadJoin.ONE_DOWN)),
                Lesson.of("wanted > head", "flush", join("The top tread is level with the floor", HeadJoin.FLUSH)));
    }

    private static Canvas join(String title, HeadJoin join) {
        return Window.onHead(title, Sample.PLAIN.with(join), WIDE).drawn().canvas();
    }

    private static List<Lesson> fixings() {
        return List.of(
                fixing("bolts", bolts()),
                fixing("metal hanger", hanger()),
                fixing("hanger board", head("A board let into the back of the head", HANGER_BOARD)),
                fixing("ledger", head("A ledger that the head sits on", LEDGER)),
                size(FIXING + " > thickness", head("The board's thickness", HANGER_BOARD), true, true),
                size(FIXING + " > height", head("The board's height", HANGER_BOARD), true, false));
    }

    private static Lesson fixing(String choice, Window window) {
        return Lesson.of(FIXING + " > kind", choice, window.canvas());
    }

    private static Window head(String title, HeadFixing fixing) {
        return Window.onHead(title, Sample.PLAIN.with(HeadJoin.FLUSH).with(fixing), WHOLE_HEAD)
                .drawn();
    }

    private static Window bolts() {
        Window window = head("Bolts through the header", new HeadFixing.Bolts());
        StringerShape shape = new StringerShape(window.stair());
        Point low = shape.headBottom();
        window.canvas().part("bolts", () -> {
            bolt(window, low.shifted(Length.ZERO, Length.inches(1)));
            bolt(window, low.shifted(Length.ZERO, Length.inches(5)));
        });
        return window;
    }

    private static void bolt(Window window, Point onFace) {
        Pencil pencil = window.canvas().pencil();
        Spot back = window.at(onFace.shifted(Length.inches(2), Length.ZERO));
        pencil.line(Pen.CUT, window.at(onFace.shifted(Length.inches(-3), Length.ZERO)), back);
        pencil.line(Pen.CUT, back.shifted(0, -1), back.shifted(0, 1));
    }

    private static Window hanger() {
        Window window = head("A metal hanger under the head", new HeadFixing.MetalHanger());
        StringerShape shape = new StringerShape(window.stair());
        Point low = shape.headBottom();
        Point seat = Point.of(
                low.x().minus(Length.inches(3)), shape.bottomEdge(low.x().minus(Length.inches(3))));
        Length up = Length.inches(5);
        window.canvas().part("hanger", () -> {
            Pencil pencil = window.canvas().pencil();
            List<Spot> strap = window.at(List.of(
                    low.shifted(Length.ZERO, up), low, seat, seat.shifted(Length.inches(0, 3, 4), Length.inches(2))));
            pencil.outline(Pen.CUT, strap);
            pencil.dot(Fill.BLACK, window.at(low.shifted(Length.inches(-1), Length.inches(2))), 0.35);
            pencil.dot(Fill.BLACK, window.at(low.shifted(Length.inches(-1), Length.inches(1))), 0.35);
        });
        return window;
    }

    private static List<Lesson> feet() {
        return List.of(
                foot("on the surface", foot("On the surface itself", new FootDetail.OnSurface())),
                foot("sole board", foot("On a board that lies flat", SOLE)),
                foot("kicker", foot("Held by a board let into the toe", KICKER)),
                size(FOOT + " > thickness", foot("The sole board's thickness", SOLE), false, false),
                size(FOOT + " > width", foot("The sole board's width", SOLE), false, true),
                size(FOOT + " > height", foot("The kicker's height", KICKER), false, false),
                size(FOOT + " > depth", foot("The kicker's depth", KICKER), false, true));
    }

    private static Lesson foot(String choice, Window window) {
        return Lesson.of(FOOT + " > kind", choice, window.canvas());
    }

    private static Window foot(String title, FootDetail foot) {
        return Window.onFoot(title, Sample.PLAIN.with(foot), NEAR).drawn();
    }

    private static List<Lesson> surfaces() {
        return List.of(
                surface("concrete pad", FootSurface.CONCRETE_PAD),
                surface("timber floor", FootSurface.TIMBER_FLOOR),
                surface("compacted ground", FootSurface.COMPACTED_GROUND));
    }

    private static Lesson surface(String choice, FootSurface surface) {
        Window window = Window.onFoot("The foot on " + choice, Sample.PLAIN.with(surface), WIDE);
        return Lesson.of("measured > foot lands on", choice, window.drawn().canvas());
    }

    /** One size of the board at the head or at the foot. */
    private static Lesson size(String field, Window window, boolean atHead, boolean level) {
        SideView side = new SideView(window.stair());
        Outline board = (atHead ? side.headBoard() : side.footBoard()).orElseThrow();
        Point low = Point.of(board.least(Point::x), board.least(Point::y));
        Point high = Point.of(board.greatest(Point::x), board.greatest(Point::y));
        Spot from = window.at(low);
        Spot to = level ? window.at(Point.of(high.x(), low.y())) : window.at(Point.of(low.x(), high.y()));
        double off = level ? 1.8 : -1.8;
        Spot start = level ? from.shifted(0, off) : from.shifted(off, 0);
        Spot end = level ? to.shifted(0, off) : to.shifted(off, 0);
        if (start.distanceTo(end) < 6) {
            window.taping().pinch(start, end);
        } else {
            window.taping().between(start, end);
        }
        return Lesson.of(field, window.canvas());
    }
}
