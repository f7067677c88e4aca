package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.RandomJobs;
import pitchboard.RandomJobs.Asked;
import pitchboard.Samples;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Shape;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;
import pitchboard.rules.Checker;
import pitchboard.rules.Fact;
import pitchboard.rules.Finding;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.Unknown;
import pitchboard.rules.Verdict;
import pitchboard.rules.books.Books;

/** A rule that cannot tell and names a line of the job is answered by that line. */
final class AskingLawsTest {
    private static final List<KeyLine> LINES = JobText.keys(List.of());

    @ParameterizedTest
    @EnumSource
    void every_fact_has_a_line_of_the_job_file(Fact fact) {
        String line = withoutNumbers(Asking.field(new Unknown(fact, 3)));
        assertThat(LINES).extracting(KeyLine::path).contains(line);
    }

    private static String withoutNumbers(String field) {
        return field.replaceAll(" > [0-9]+", "");
    }

    /** What is known afterwards is another verdict, or the next thing that is not known. */
    @Test
    void an_answer_where_a_rule_asks_for_it_settles_the_verdict_or_leads_on() {
        Set<Fact> answered = EnumSet.noneOf(Fact.class);
        Samples.jobs(150).hold(asked -> {
            Notes notes = Notes.of(asked.site(), asked.brief(), "any", Optional.empty());
            if (isReadable(JobText.write(notes))) {
                Books.all().forEach(book -> new Answering(asked.seed(), book, answered).all(notes));
            }
        });
        // No rule of any book rests on the run available.
        assertThat(answered).isEqualTo(EnumSet.complementOf(EnumSet.of(Fact.RUN_AVAILABLE)));
    }

    private static boolean isReadable(Written job) {
        return JobText.ofJson(JsonWriter.write(job), List.of()) instanceof JobText.Understood;
    }

    /** Answers what one rulebook asks of one job. */
    private record Answering(long seed, Rulebook book, Set<Fact> answered) {
        void all(Notes notes) {
            for (Finding finding : findings(notes)) {
                if (finding.verdict() instanceof Verdict.CannotTell cannot) {
                    cannot.unknown().ifPresent(unknown -> answer(notes, finding, unknown));
                }
            }
        }

        private void answer(Notes notes, Finding finding, Unknown unknown) {
            Written.Group job = with(JobText.write(notes), Asking.field(unknown));
            Optional<Verdict> after = JobText.ofJson(JsonWriter.write(job), List.of())
                    .match(read -> verdict(read.notes(), finding.rule()), unread -> Optional.empty());
            after.ifPresent(verdict -> {
                assertThat(verdict).as(finding.rule().id() + " after " + job).isNotEqualTo(finding.verdict());
                answered.add(unknown.fact());
            });
        }

        private List<Finding> findings(Notes notes) {
            return RandomJobs.findAnyStair(new Asked(seed, notes.site(), notes.brief())).stream()
                    .flatMap(stair -> Checker.check(stair, book).stream())
                    .toList();
        }

        private Optional<Verdict> verdict(Notes notes, Rule rule) {
            return findings(notes).stream()
                    .filter(each -> each.rule().equals(rule))
                    .map(Finding::verdict)
                    .findFirst();
        }
    }

    /** The job with the form's own example in a field. */
    private static Written.Group with(Written.Group job, String field) {
        return (Written.Group) put(job, new JobForm(List.of()), List.of(field.split(" > ", -1)));
    }

    private static Written put(Written at, Form<?> form, List<String> path) {
        if (path.isEmpty()) {
            return example(form);
        }
        if (at instanceof Written.Sequence sequence) {
            List<Written> items = new ArrayList<>(sequence.items());
            int item = Integer.parseInt(path.get(0)) - 1;
            items.set(item, put(items.get(item), form, path.subList(1, path.size())));
            return new Written.Sequence(Spot.NOWHERE, items);
        }
        Key<?> key = form.keys().stream()
                .filter(each -> each.name().equals(path.get(0)))
                .findFirst()
                .orElseThrow();
        List<Written.Entry> entries = new ArrayList<>(entries(at, form));
        Written before = entries.stream()
                .filter(entry -> entry.key().equals(key.name()))
                .map(Written.Entry::value)
                .findFirst()
                .orElse(new Written.Group(Spot.NOWHERE, List.of()));
        entries.removeIf(entry -> entry.key().equals(key.name()));
        entries.add(new Written.Entry(key.name(), put(before, key.form(), path.subList(1, path.size()))));
        return new Written.Group(Spot.NOWHERE, entries);
    }

    /** A group that is written short says its leading line. */
    private static List<Written.Entry> entries(Written at, Form<?> form) {
        return at.match(
                text -> List.of(new Written.Entry(form.shape().lead().orElseThrow(), text)),
                Written.Group::entries,
                sequence -> List.of());
    }

    private static Written example(Form<?> form) {
        Shape shape = form.shape();
        if (shape.kind() == Shape.Kind.LIST) {
            return new Written.Text(shape.instead().get(0));
        }
        String example = form.example(Tape.Units.INCHES);
        if (!example.startsWith("{")) {
            return new Written.Text(example);
        }
        List<Written.Entry> entries = new ArrayList<>();
        for (String line : example.substring(2, example.length() - 2).split(", ", -1)) {
            int colon = line.indexOf(": ");
            entries.add(new Written.Entry(line.substring(0, colon), new Written.Text(line.substring(colon + 2))));
        }
        return new Written.Group(Spot.NOWHERE, entries);
    }
}
