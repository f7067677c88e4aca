package pitchboard.browser;

import java.util.List;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.job.Composed;
import pitchboard.job.ReadJob;

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

    static Json refused(List<ReadJob.Trouble> troubles) {
        return Json.object()
                .with(
                        "problems",
                        Json.list(
                                troubles,
                                trouble -> problem(text(trouble.in()), trouble.at(), trouble.field(), trouble.words())
                                        .with("missing", Json.truth(trouble.missing()))));
    }

    private static String text(Composed.Text text) {
        return text == Composed.Text.JOB ? "job" : "changes";
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
