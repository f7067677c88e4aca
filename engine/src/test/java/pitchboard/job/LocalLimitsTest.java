package pitchboard.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pitchboard.OrdinaryJob;
import pitchboard.intake.ChangesText;
import pitchboard.intake.JobText;
import pitchboard.intake.LocalChanges;
import pitchboard.intake.Notes;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Tape;
import pitchboard.rules.Amendment;
import pitchboard.rules.Finding;
import pitchboard.rules.books.Books;

/** Local changes that the job itself holds. The county in them is invented. */
final class LocalLimitsTest {
    private static final OrdinaryJob ORDINARY = OrdinaryJob.ofRise(Length.inches(105));

    private static LocalChanges.Change change(String rule, Quantity limit, String saidBy) {
        return new LocalChanges.Change(
                Spot.NOWHERE, new Amendment(rule, Optional.empty(), Optional.of(limit), saidBy, "", ""));
    }

    private static ReadJob read(Optional<String> file, LocalChanges.Change... limits) {
        Notes notes = new Notes(ORDINARY.site(), ORDINARY.brief(), "IRC 2021", file, List.of(limits));
        Optional<Written> changes = file.map(name -> ChangesText.write(
                new LocalChanges("IRC 2021", List.of(change("run-at-least", Length.inches(9), "county, order 12"))),
                Tape.Units.INCHES));
        return ReadJob.of(JobText.write(notes), changes, Books.all());
    }

    private static Stream<Finding> changed(ReadJob read) {
        Outcome outcome = Pipeline.solve(((ReadJob.Understood) read).job());
        return ((Outcome.Designed) outcome)
                .findings().stream().filter(finding -> !finding.changes().isEmpty());
    }

    private static Stream<String> refusals(ReadJob read) {
        return ((ReadJob.NotUnderstood) read)
                .troubles().stream().map(trouble -> trouble.in() + " " + trouble.field() + ": " + trouble.words());
    }

    @Test
    void a_limit_in_the_job_changes_the_book_and_says_who_says_so() {
        ReadJob read = read(Optional.empty(), change("rise-at-most", Length.inches(8, 1, 4), "county, order 12"));
        assertThat(changed(read)).singleElement().satisfies(finding -> {
            assertThat(finding.rule().limit().orElseThrow().value()).isEqualTo(Length.inches(8, 1, 4));
            assertThat(finding.changes().get(0).amendment().saidBy()).isEqualTo("county, order 12");
        });
    }

    @Test
    void limits_in_the_job_stand_beside_those_of_the_file_it_names() {
        ReadJob read =
                read(Optional.of("county.yaml"), change("rise-at-most", Length.inches(8, 1, 4), "county, order 12"));
        assertThat(changed(read)).extracting(finding -> finding.rule().id()).contains("rise-at-most", "run-at-least");
    }

    @Test
    void a_rule_that_the_file_changes_cannot_be_changed_again() {
        ReadJob read = read(Optional.of("county.yaml"), change("run-at-least", Length.inches(8), "somebody else"));
        assertThat(refusals(read))
                .containsExactly("JOB : run-at-least was changed before; keep one change for each rule");
    }

    @Test
    void a_limit_that_nobody_stands_behind_is_refused() {
        ReadJob read = read(Optional.empty(), change("rise-at-most", Length.inches(8, 1, 4), ""));
        assertThat(refusals(read)).singleElement().asString().startsWith("JOB local limits > 1 > said by: ");
    }

    @Test
    void a_rule_that_the_book_does_not_have_is_refused_with_the_nearest_name() {
        ReadJob read = read(Optional.empty(), change("rise-at-mots", Length.inches(8, 1, 4), "county, order 12"));
        assertThat(refusals(read))
                .containsExactly("JOB : IRC 2021 has no rule called rise-at-mots; the nearest is rise-at-most");
    }

    @Test
    void what_was_written_is_read_again() {
        LocalChanges.Change limit = change("rise-at-most", Length.inches(8, 1, 4), "county, order 12");
        Notes notes = new Notes(ORDINARY.site(), ORDINARY.brief(), "IRC 2021", Optional.empty(), List.of(limit));
        Written written = JobText.write(notes);
        assertThat(JobText.write(notes)).isEqualTo(written);
        assertThat(written.toString())
                .contains("local limits")
                .contains("8 1/4")
                .contains("county, order 12");
    }
}
