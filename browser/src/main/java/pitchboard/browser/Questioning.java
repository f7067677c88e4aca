package pitchboard.browser;

import java.util.List;
import java.util.function.Supplier;
import pitchboard.documents.json.Json;
import pitchboard.intake.JobText;
import pitchboard.intake.Question;
import pitchboard.intake.form.Shape;

/** Describes the whole job file as things to ask for. */
final class Questioning implements Task {
    @Override
    public String name() {
        return "questions";
    }

    @Override
    public List<String> keys() {
        return List.of();
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        return () -> Json.object().with("lines", lines(JobText.questions(Solving.BOOKS)));
    }

    private static Json lines(List<Question> questions) {
        return Json.list(questions, Questioning::line);
    }

    private static Json line(Question question) {
        Shape shape = question.shape();
        return Json.object()
                .says("name", question.name())
                .says("field", question.line().path())
                .says("meaning", question.line().meaning())
                .says("leftOut", question.line().leftOut())
                .with("needed", Json.truth(question.needed()))
                .says("kind", shape.kind().words())
                .with("choices", Json.list(shape.choices(), Json::words))
                .with("instead", Json.list(shape.instead(), Json::words))
                .with("lead", shape.lead().<Json>map(Json::words).orElseGet(Json::none))
                .says("inches", question.line().inInches())
                .says("millimetres", question.line().inMillimetres())
                .with("lines", lines(question.lines()));
    }
}
