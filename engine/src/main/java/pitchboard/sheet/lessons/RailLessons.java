package pitchboard.sheet.lessons;

import java.util.List;
import java.util.function.UnaryOperator;
import pitchboard.sheet.Pen;

/** What a guard is built of: a few steps of it from the side, and its posts seen along the stair. */
final class RailLessons {
    private static final String GUARD = "wanted > guard";
    private static final double RUN = 6;
    private static final double RISE = 4;

    private RailLessons() {}

    static List<Lesson> all() {
        return List.of(
                fixing("lapped", "A post against the outer face of the stringer", scene -> scene.wood(10, 3, 13.4, 21)),
                fixing(
                        "notched",
                        "A post notched over the stringer",
                        scene -> scene.wood(10, 3, 13.4, 10).wood(10, 10, 11.7, 21)),
                fixing("set on", "A post that stands on the tread", scene -> scene.wood(14, 2, 17.4, 9)),
                side(
                        " > posts > behind nosing",
                        "From the nosing back to the post",
                        scene -> scene.wood(15, 2, 17, 12).pinch(12, 5, 15, 5).line(Pen.THIN, 12, 12, 12, 3.5)),
                side(
                        " > posts > greatest spacing",
                        "From the middle of a post to the middle of the next",
                        scene ->
                                scene.wood(2.5, 5, 4, 20).wood(20.5, 1.5, 22, 8).tape(3.2, 6.5, 21.2, 6.5)),
                top(
                        "square",
                        "Posts cut square, the rail between them",
                        scene -> scene.wood(9, 6, 11, 16)
                                .wood(21, 2, 23, 8)
                                .line(Pen.OUTLINE, 11, 9, 21, 2.4)
                                .line(Pen.OUTLINE, 11, 10.5, 21, 3.9)),
                top(
                        "under the rail",
                        "The rail runs over the posts",
                        scene -> scene.wood(9, 9, 11, 16)
                                .wood(21, 3, 23, 8)
                                .line(Pen.OUTLINE, 6, 9.8, 26, 0.8)
                                .line(Pen.OUTLINE, 6, 11.4, 26, 2.4)),
                side(
                        " > bottom rail > above nosings",
                        "From the line of the nosings plumb up to the bottom rail",
                        scene -> rail(scene, 3)
                                .line(Pen.CENTRE, 0.6, 19.6, 28, 1.3)
                                .pinch(10, 13.3, 10, 10.3)),
                infill("balusters", "Plumb balusters between two rails", RailLessons::balusters),
                infill("level boards", "Boards that run with the rails", RailLessons::boards),
                infill("panels", "A solid panel in every bay", scene -> scene.wood(6, 5, 24, 19)),
                Lesson.of(
                        GUARD + " > infill > ball",
                        balusters(new Scene("The ball that must not pass"))
                                .pinch(13.2, 12, 16.8, 12)
                                .canvas()));
    }

    private static Scene steps(String title) {
        Scene scene = new Scene(title);
        for (int step = 0; step < 4; step++) {
            double nosing = step * RUN;
            double top = 20 - step * RISE;
            scene.wood(Math.max(Scene.LEFT, nosing), top, nosing + RUN + 1, top + 1);
        }
        return scene;
    }

    private static Scene rail(Scene scene, double above) {
        return scene.line(Pen.OUTLINE, 6, 16 - above, 24, 4 - above)
                .line(Pen.OUTLINE, 7, 14.2 - above, 23, 3.6 - above);
    }

    private static Lesson side(String line, String title, UnaryOperator<Scene> drawn) {
        return Lesson.of(GUARD + line, drawn.apply(steps(title)).canvas());
    }

    private static Lesson top(String word, String title, UnaryOperator<Scene> drawn) {
        return Lesson.of(
                GUARD + " > posts > top", word, drawn.apply(steps(title)).canvas());
    }

    /** Stringer and tread seen along the stair. */
    private static Lesson fixing(String word, String title, UnaryOperator<Scene> drawn) {
        Scene scene = new Scene(title).wood(13.4, 10, 15.2, 21).wood(13.4, 9, 28, 10);
        return Lesson.of(GUARD + " > posts > fixing", word, drawn.apply(scene).canvas());
    }

    private static Lesson infill(String word, String title, UnaryOperator<Scene> drawn) {
        Scene scene = new Scene(title).wood(3, 2, 6, 22).wood(24, 2, 27, 22);
        return Lesson.of(GUARD + " > infill > kind", word, drawn.apply(scene).canvas());
    }

    private static Scene balusters(Scene scene) {
        Scene railed = scene.wood(6, 3, 24, 5).wood(6, 19, 24, 21);
        for (double left = 9; left < 23; left += 6) {
            railed.wood(left, 5, left + 1.6, 19);
        }
        return railed;
    }

    private static Scene boards(Scene scene) {
        Scene railed = scene.wood(6, 3, 24, 5).wood(6, 19, 24, 21);
        for (double top = 6.5; top < 18; top += 4.2) {
            railed.wood(6, top, 24, top + 2.8);
        }
        return railed;
    }
}
