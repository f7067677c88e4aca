package pitchboard.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Written;

/** Answers requests. */
final class Answers {
    /** Everything that can be asked for. */
    static final List<Task> TASKS = List.of(
            new Solving(),
            new Questioning(),
            new Teaching(),
            new Measuring(),
            new Converting(),
            new Comparing(),
            new UnderOthers(),
            new Merging(),
            new Writing(),
            new Buying());

    private Answers() {}

    static String to(String request) {
        return JsonReader.read(request)
                .match(
                        legible -> answer(legible.written()),
                        illegible -> AnswerJson.problems("request", illegible.problems()))
                .text();
    }

    private static Json answer(Written written) {
        if (written instanceof Written.Group group) {
            Asked asked = new Asked(group);
            Optional<Task> task = task(asked);
            return task.map(known -> answer(known, asked)).orElseGet(() -> wrong(asked.problems()));
        }
        return wrong(
                List.of(new Problem(written.at(), "", Asked.shown(written), "a group with \"do\" and what it needs")));
    }

    private static Json answer(Task task, Asked asked) {
        List<String> keys = new ArrayList<>(List.of("do"));
        keys.addAll(task.keys());
        asked.allow(keys);
        Supplier<Json> answer = task.read(asked);
        return asked.problems().isEmpty() ? answer.get() : wrong(asked.problems());
    }

    private static Optional<Task> task(Asked asked) {
        Optional<String> name = asked.findWords("do");
        Optional<Task> task = TASKS.stream()
                .filter(each -> name.equals(Optional.of(each.name())))
                .findFirst();
        if (task.isEmpty()) {
            List<String> names = TASKS.stream().map(Task::name).toList();
            asked.refuse("do", "one of " + String.join(", ", names));
        }
        return task;
    }

    private static Json wrong(List<Problem> problems) {
        return AnswerJson.problems("request", problems);
    }
}
