package pitchboard.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import pitchboard.documents.json.ComparisonJson;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.Written;
import pitchboard.job.Comparison;
import pitchboard.job.ReadJob;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;

/** Holds a job against other rulebooks too, side by side. */
final class UnderOthers implements Task {
    @Override
    public String name() {
        return "under";
    }

    @Override
    public List<String> keys() {
        return List.of("job", "changes", "books");
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        Written job = asked.shape("job", "a job");
        Optional<Written> changes = asked.findShape("changes");
        List<Rulebook> books = books(asked);
        return () -> ReadJob.of(job, changes, Books.all())
                .match(
                        read -> ComparisonJson.of(Comparison.of(read.job(), books)),
                        unread -> AnswerJson.refused(unread.troubles()));
    }

    private static List<Rulebook> books(Asked asked) {
        List<Rulebook> books = new ArrayList<>();
        for (String name : asked.list("books", "a list of the names of rulebooks")) {
            Books.findByName(name)
                    .ifPresentOrElse(
                            books::add, () -> asked.refuse("books", "names among " + String.join(", ", Solving.BOOKS)));
        }
        return books;
    }
}
