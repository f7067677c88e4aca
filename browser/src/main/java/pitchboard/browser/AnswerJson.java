package pitchboard.browser;

import java.util.List;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.job.Composed;

/** Answers that say everything that is wrong. */
final class AnswerJson {
    private AnswerJson() {}

    static Json problems(String in, List<Problem> problems) {
        return Json.object()
                .with(
                        "problems",
                        Json.list(
                                problems,
                                problem -> problem(in, problem.at(), problem.field(), words(problem))
                                        .with(
                                                "missing",
                                                Json.truth(problem.read().isEmpty()))));
    }

    static Json refused(List<Composed.Problem> problems) {
        return Json.object()
                .with(
                        "problems",
                        Json.list(
                                problems,
                                problem -> problem("changes", problem.at(), "", problem.words())
                                        .with("missing", Json.truth(false))));
    }

    private static Json.Fields problem(String in, Spot at, String field, String words) {
        return Json.object()
                .says("in", in)
                .says("field", field)
                .with("line", Json.number(at.line()))
                .with("column", Json.number(at.column()))
                .says("words", words);
    }

    /** Without the place: it is told apart. */
    private static String words(Problem problem) {
        return new Problem(Spot.NOWHERE, "", problem.read(), problem.expected()).sentence();
    }
}
