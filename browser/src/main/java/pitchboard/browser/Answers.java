package pitchboard.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.Problem;

/** Answers requests. */
final class Answers {
    private Answers() {}

    static String to(String request) {
        return JsonReader.read(request)
                .match(
                        legible -> {
                            List<Problem> problems = new ArrayList<>();
                            Optional<Request> read = Request.find(legible.written(), problems);
                            return read.map(Solving::answer).orElseGet(() -> AnswerJson.problems("request", problems));
                        },
                        illegible -> AnswerJson.problems("request", illegible.problems()))
                .text();
    }
}
