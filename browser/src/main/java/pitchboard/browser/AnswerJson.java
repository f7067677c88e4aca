package pitchboard.browser;

import java.util.List;
import pitchboard.documents.json.Json;
import pitchboard.documents.json.OutcomeJson;
import pitchboard.documents.svg.SvgWriter;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.job.Composed;
import pitchboard.job.Outcome;
import pitchboard.sheet.Sheet;

/** Answers as JSON: what came of the job with its drawings, or everything that is wrong. */
final class AnswerJson {
    private AnswerJson() {}

    /** The page has the type; drawings do not carry it. */
    static Json outcome(Outcome outcome, List<Sheet> sheets) {
        SvgWriter svg = new SvgWriter();
        return Json.object()
                .with("outcome", OutcomeJson.of(outcome))
                .with(
                        "sheets",
                        Json.list(
                                sheets,
                                sheet -> Json.object()
                                        .says("id", sheet.id())
                                        .says("title", sheet.title())
                                        .says("svg", svg.write(sheet))));
    }

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
