package pitchboard.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Written;

/**
 * A job to be solved, as the page sends it.
 *
 * @param job what would stand in the job file
 * @param changes what would stand in the file of local changes that the job names
 * @param sheets which sheets are wanted as drawings
 */
record Request(Written job, Optional<Written> changes, Wanted sheets) {
    private static final List<String> KEYS = List.of("do", "job", "changes", "sheets");

    /** Which sheets. */
    record Wanted(boolean all, List<String> ids) {
        static final Wanted NONE = new Wanted(false, List.of());

        boolean includes(String id) {
            return all || ids.contains(id);
        }

        boolean isNone() {
            return !all && ids.isEmpty();
        }
    }

    /** Reads a request; what is wrong with it is added to the problems, and then it is empty. */
    static Optional<Request> find(Written written, List<Problem> problems) {
        return written instanceof Written.Group group
                ? new Reading(group, problems).request()
                : refuse(problems, written, "", "a group with \"do\" and \"job\"");
    }

    private static <T> Optional<T> refuse(List<Problem> problems, Written at, String field, String expected) {
        problems.add(new Problem(at.at(), field, "", expected));
        return Optional.empty();
    }

    /** One reading of a request. */
    private record Reading(Written.Group group, List<Problem> problems) {
        Optional<Request> request() {
            group.entries().stream()
                    .filter(entry -> !KEYS.contains(entry.key()))
                    .forEach(stranger ->
                            refuse(problems, stranger.value(), stranger.key(), "one of " + String.join(", ", KEYS)));
            if (!text("do").equals(Optional.of("solve"))) {
                refuse(problems, group, "do", "\"solve\"");
            }
            Optional<Written> job = find("job");
            if (job.isEmpty()) {
                refuse(problems, group, "job", "a job");
            }
            Optional<Wanted> sheets = sheets();
            return problems.isEmpty()
                    ? Optional.of(new Request(job.orElseThrow(), find("changes"), sheets.orElseThrow()))
                    : Optional.empty();
        }

        private Optional<Written> find(String key) {
            return group.findEntry(key).map(Written.Entry::value);
        }

        private Optional<String> text(String key) {
            return find(key).flatMap(Reading::text);
        }

        private static Optional<String> text(Written written) {
            return written instanceof Written.Text text ? Optional.of(text.value()) : Optional.empty();
        }

        private Optional<Wanted> sheets() {
            Optional<Written> said = find("sheets");
            if (said.isEmpty()) {
                return Optional.of(Wanted.NONE);
            }
            if (text(said.get()).equals(Optional.of("all"))) {
                return Optional.of(new Wanted(true, List.of()));
            }
            List<String> ids = new ArrayList<>();
            if (said.get() instanceof Written.Sequence sequence) {
                sequence.items().forEach(item -> text(item).ifPresent(ids::add));
                if (ids.size() == sequence.items().size()) {
                    return Optional.of(new Wanted(false, ids));
                }
            }
            return refuse(problems, said.get(), "sheets", "\"all\", or a list of the names of sheets");
        }
    }
}
