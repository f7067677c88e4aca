package pitchboard.browser;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import pitchboard.carry.SecondLook;
import pitchboard.documents.json.ConsideredJson;
import pitchboard.documents.json.Json;
import pitchboard.documents.json.OutcomeJson;
import pitchboard.intake.written.Written;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.job.ReadJob;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;

/** Solves a job: reads it, works the local changes into its rulebook, and draws what was asked for. */
final class Solving implements Task {
    static final List<String> BOOKS = Books.all().stream().map(Rulebook::name).toList();

    @Override
    public String name() {
        return "solve";
    }

    @Override
    public List<String> keys() {
        return List.of("job", "changes", "sheets", "pictures", "dots", "elements");
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        Request request = new Request(
                asked.shape("job", "a job"),
                asked.findShape("changes"),
                asked.selection("sheets"),
                asked.selection("pictures"),
                asked.yes("dots"),
                asked.yes("elements"));
        return request::answer;
    }

    /**
     * A job to be solved.
     *
     * @param job what would stand in the job file
     * @param changes what would stand in the file of local changes that the job names
     * @param sheets which sheets are wanted as drawings
     * @param pictures which pictures for a screen are wanted
     * @param dots whether every stair that was tried is wanted
     * @param elements whether the stringers are to be looked at by finite elements, too
     */
    private record Request(
            Written job,
            Optional<Written> changes,
            Selection sheets,
            Selection pictures,
            boolean dots,
            boolean elements) {
        Json answer() {
            return ReadJob.of(job, changes, Books.all())
                    .match(read -> solved(read.job()), unread -> AnswerJson.refused(unread.troubles()));
        }

        private Json solved(Job job) {
            Outcome outcome = Pipeline.solve(job);
            Json.Fields answer = Json.object()
                    .with("outcome", OutcomeJson.of(outcome, outcome.match(this::look, none -> Optional.empty())))
                    .with("sheets", outcome.match(this::sheets, none -> Drawings.NONE))
                    .with("pictures", outcome.match(this::pictures, none -> Drawings.NONE));
            return answer.with("dots", ConsideredJson.of(outcome, dots ? Pipeline.considered(job) : List.of()));
        }

        private Optional<SecondLook> look(Outcome.Designed designed) {
            return elements ? Optional.of(Pipeline.secondLook(designed)) : Optional.empty();
        }

        private Json sheets(Outcome.Designed designed) {
            return sheets.isNone() ? Drawings.NONE : Drawings.sheets(Pipeline.sheets(designed, sheets::includes));
        }

        private Json pictures(Outcome.Designed designed) {
            return pictures.isNone()
                    ? Drawings.NONE
                    : Drawings.pictures(Pipeline.pictures(designed, pictures::includes), Pipeline.places(designed));
        }
    }
}
