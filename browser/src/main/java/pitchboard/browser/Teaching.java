package pitchboard.browser;

import java.util.List;
import java.util.function.Supplier;
import pitchboard.documents.json.Json;
import pitchboard.documents.svg.PictureWriter;
import pitchboard.sheet.lessons.Lesson;
import pitchboard.sheet.lessons.Lessons;

/** Gives the small pictures of how to measure and of what can be chosen. */
final class Teaching implements Task {
    private static final PictureWriter WRITER = new PictureWriter();

    @Override
    public String name() {
        return "lessons";
    }

    @Override
    public List<String> keys() {
        return List.of();
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        return () -> Json.object().with("pictures", Json.list(Lessons.all(), Teaching::picture));
    }

    private static Json picture(Lesson lesson) {
        return Json.object()
                .says("field", lesson.field())
                .with("choice", lesson.choice().<Json>map(Json::words).orElseGet(Json::none))
                .says("svg", WRITER.write(lesson.picture()));
    }
}
