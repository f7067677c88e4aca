package pitchboard.sheet.lessons;

import java.util.List;
import pitchboard.brief.Risers;
import pitchboard.measure.Length;
import pitchboard.parts.SideView;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.stair.Stair;

/** What steps are made of, and their sizes. */
final class StepLessons {
    private static final Length WIDE = Length.inches(32);
    private static final Length NEAR = Length.inches(15);
    private static final Risers BOARDS = new Risers.Boards(Length.inches(0, 3, 4));

    private StepLessons() {}

    static List<Lesson> all() {
        return List.of(
                Lesson.of(
                        "wanted > risers > kind",
                        "open",
                        steps("Nothing between the treads").canvas()),
                Lesson.of(
                        "wanted > risers > kind",
                        "boards",
                        boarded("A board in front of every riser cut", WIDE).canvas()),
                riserThickness(),
                run("wanted > steps > run"),
                run("wanted > steps > best run"),
                rise("wanted > steps > best rise"),
                boardDepth(),
                boardWidth(),
                boardGap(),
                boardThickness(),
                over("wanted > handrail > height", "The top of the rail, plumb over the line of the nosings"),
                over("wanted > guard > height", "The top of the guard, plumb over the line of the nosings"));
    }

    private static Window steps(String title) {
        return Window.onSteps(title, Sample.PLAIN, WIDE).drawn();
    }

    private static Window boarded(String title, Length across) {
        return Window.onSteps(title, Sample.PLAIN.with(BOARDS), across).drawn();
    }

    private static Lesson riserThickness() {
        Window window = boarded("The riser boards' thickness", Length.inches(26));
        Outline board = new SideView(window.stair()).riserBoard(3).orElseThrow();
        Length middle = board.least(Point::y).plus(board.greatest(Point::y)).dividedBy(2);
        window.taping()
                .pinch(
                        window.at(Point.of(board.least(Point::x), middle)),
                        window.at(Point.of(board.greatest(Point::x), middle)));
        return Lesson.of("wanted > risers > thickness", window.canvas());
    }

    private static Lesson run(String field) {
        Window window = steps("From nosing to nosing, level");
        Spot front = window.at(window.stair().nosing(2));
        Spot back = window.at(window.stair().nosing(3));
        window.canvas().plain(() -> window.canvas().pencil().line(Pen.THIN, front, Spot.of(front.x(), back.y() - 4.2)));
        window.canvas().plain(() -> window.canvas().pencil().line(Pen.THIN, back, back.shifted(0, -4.2)));
        window.taping().between(Spot.of(front.x(), back.y() - 3), back.shifted(0, -3));
        return Lesson.of(field, window.canvas());
    }

    private static Lesson rise(String field) {
        Window window = steps("From tread to tread, plumb");
        Spot lower = window.at(window.stair().nosing(2));
        Spot upper = window.at(window.stair().nosing(3));
        window.canvas()
                .plain(() -> window.canvas().pencil().line(Pen.THIN, upper, Spot.of(lower.x() - 4.2, upper.y())));
        window.canvas().plain(() -> window.canvas().pencil().line(Pen.THIN, lower, lower.shifted(-4.2, 0)));
        window.taping().between(lower.shifted(-3, 0), Spot.of(lower.x() - 3, upper.y()));
        return Lesson.of(field, window.canvas());
    }

    /** Square to its edges, from the corner of a step. */
    private static Lesson boardDepth() {
        Window window = steps("Across the board, square to its edges");
        Stair stair = window.stair();
        Length depth = stair.brief().stringers().stock().depth();
        Point corner = Point.of(stair.riserCut(3), stair.levelCut(3));
        Point across = corner.shifted(
                stair.pitch().sinTimes(depth), stair.pitch().cosTimes(depth).negated());
        window.taping().between(window.at(corner), window.at(across));
        return Lesson.of("wanted > stringers > depth", window.canvas());
    }

    private static List<Outline> boards(Window window) {
        return new SideView(window.stair()).treadBoards(2);
    }

    private static Window tread(String title) {
        return Window.onSteps(title, Sample.PLAIN, NEAR).drawn();
    }

    private static Lesson boardWidth() {
        Window window = tread("The width of one board");
        Outline board = boards(window).get(0);
        Spot left = window.at(Point.of(board.least(Point::x), board.greatest(Point::y)));
        Spot right = window.at(Point.of(board.greatest(Point::x), board.greatest(Point::y)));
        window.taping().between(left.shifted(0, -2), right.shifted(0, -2));
        return Lesson.of("wanted > treads > width", window.canvas());
    }

    private static Lesson boardGap() {
        Window window = tread("The gap between two boards of a tread");
        List<Outline> boards = boards(window);
        Length top = boards.get(0).greatest(Point::y);
        Spot left = window.at(Point.of(boards.get(0).greatest(Point::x), top)).shifted(0, -2);
        Spot right = window.at(Point.of(boards.get(1).least(Point::x), top)).shifted(0, -2);
        window.taping().pinch(left, right);
        return Lesson.of("wanted > treads > gap", window.canvas());
    }

    private static Lesson boardThickness() {
        Window window = tread("The boards' thickness");
        Outline board = boards(window).get(0);
        Spot low = window.at(Point.of(board.least(Point::x), board.least(Point::y)));
        Spot high = window.at(Point.of(board.least(Point::x), board.greatest(Point::y)));
        window.taping().pinch(low.shifted(-1.6, 0), high.shifted(-1.6, 0));
        return Lesson.of("wanted > treads > thickness", window.canvas());
    }

    private static Lesson over(String field, String title) {
        Length height = Length.inches(36);
        Stair stair = Sample.PLAIN.stair();
        Point middle = stair.nosing(2).shifted(Length.inches(6), Length.inches(13));
        Window window = new Window(title, Sample.PLAIN, middle, Length.inches(90)).drawn();
        Point first = stair.nosing(1).shifted(Length.ZERO, height);
        Point last = stair.nosing(3).shifted(Length.ZERO, height);
        window.canvas().part("rail", () -> window.canvas().pencil().line(Pen.CUT, window.at(first), window.at(last)));
        window.taping()
                .between(window.at(stair.nosing(2)), window.at(stair.nosing(2).shifted(Length.ZERO, height)));
        return Lesson.of(field, window.canvas());
    }
}
