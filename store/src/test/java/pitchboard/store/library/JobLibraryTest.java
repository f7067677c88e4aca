package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static pitchboard.store.library.Crew.PHONE;
import static pitchboard.store.library.Crew.all;
import static pitchboard.store.library.Crew.draft;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.store.FileTrouble;
import pitchboard.store.Notation;
import pitchboard.store.Starter;

final class JobLibraryTest {
    private static final Draft FIRST = draft("job: Stair to the sail loft\nplace: boathouse\n");
    private static final Draft SECOND = draft("job: Stair to the sail loft\nplace: boathouse, east gable\n");

    @TempDir
    Path folder;

    private JobLibrary library;

    @BeforeEach
    void open() throws FileTrouble {
        library = Crew.library(folder);
    }

    @AfterEach
    void close() {
        library.close();
    }

    @Test
    void a_new_job_is_found_again_letter_for_letter_also_after_closing() throws FileTrouble {
        Wording odd = new Wording(Notation.JSON, "{\r\n \"job\" : \"Ümläut\",\t\"for\": \"ı\" }  ");
        Draft draft = Draft.of(odd, Optional.of(new Wording(Notation.YAML, "# why: the county says so\n")));
        Job made = library.create(draft, new By("Phone in the van", "as measured"));
        assertThat(made.id()).matches("[a-z0-9]{10}");
        assertThat(made)
                .isEqualTo(new Job(
                        made.id(),
                        false,
                        new Version(1, Crew.MORNING, new By("Phone in the van", "as measured"), draft)));
        assertThat(library.findNewest(made.id())).contains(made);
        library.close();
        open();
        assertThat(library.findNewest(made.id())).contains(made);
    }

    @Test
    void every_version_stays() throws FileTrouble {
        Job job = library.create(FIRST, PHONE);
        Version second = saved(library.save(job.id(), 1, SECOND, new By("Desk", "east, not west")));
        assertThat(second)
                .isEqualTo(new Version(2, Crew.MORNING.plusSeconds(1), new By("Desk", "east, not west"), SECOND));
        assertThat(library.findVersion(job.id(), 1)).contains(job);
        assertThat(library.findVersion(job.id(), 2)).contains(new Job(job.id(), false, second));
        assertThat(library.findNewest(job.id())).isEqualTo(library.findVersion(job.id(), 2));
        assertThat(library.versions(job.id()))
                .containsExactly(second.line(), job.version().line());
    }

    @Test
    void saving_the_same_again_adds_nothing_whatever_it_began_from() throws FileTrouble {
        Job job = library.create(FIRST, PHONE);
        Version second = saved(library.save(job.id(), 1, SECOND, PHONE));
        assertThat(library.save(job.id(), 2, SECOND, PHONE)).isEqualTo(new Saving.Unchanged(second));
        assertThat(library.save(job.id(), 1, SECOND, PHONE)).isEqualTo(new Saving.Unchanged(second));
        assertThat(library.versions(job.id())).hasSize(2);
    }

    @Test
    void a_file_keeps_its_comments_while_the_page_says_the_same_in_its_own_notation() throws FileTrouble {
        Draft byHand = draft("job: Stair   # the one at the back\nplace: 'boathouse'\n");
        Job job = library.create(byHand, PHONE);
        Wording asJson = new Wording(Notation.JSON, "{\"job\":\"Stair\",\"place\":\"boathouse\"}");
        assertThat(library.save(job.id(), 1, Draft.of(asJson, Optional.empty()), PHONE))
                .isEqualTo(new Saving.Unchanged(job.version()));
        Draft comment = draft("job: Stair   # the one in front\nplace: 'boathouse'\n");
        assertThat(library.save(job.id(), 1, comment, PHONE)).isInstanceOf(Saving.Saved.class);
    }

    @Test
    void local_changes_count_as_a_change() throws FileTrouble {
        Job job = library.create(FIRST, PHONE);
        Draft with = new Draft(
                FIRST.job(), Optional.of(new Wording(Notation.YAML, "rulebook: IRC 2021\n")), FIRST.name(), "");
        assertThat(saved(library.save(job.id(), 1, with, PHONE)).draft()).isEqualTo(with);
        assertThat(library.save(job.id(), 2, FIRST, PHONE)).isInstanceOf(Saving.Saved.class);
    }

    @Test
    void a_conflict_adds_nothing_and_shows_what_the_other_saved() throws FileTrouble {
        Job job = library.create(FIRST, PHONE);
        Version theirs = saved(library.save(job.id(), 1, SECOND, PHONE));
        for (int base : List.of(1, 0, -1, 3, 99)) {
            assertThat(library.save(job.id(), base, draft("job: mine\n"), PHONE))
                    .isEqualTo(new Saving.Conflict(theirs));
        }
        assertThat(library.versions(job.id()))
                .containsExactly(theirs.line(), job.version().line());
    }

    @Test
    void an_undo_is_a_new_version_and_can_be_undone() throws FileTrouble {
        Job job = library.create(FIRST, PHONE);
        library.save(job.id(), 1, SECOND, PHONE);
        assertThat(saved(library.restore(job.id(), 1, PHONE)))
                .returns(3, Version::number)
                .returns(FIRST, Version::draft);
        assertThat(saved(library.restore(job.id(), 2, PHONE)))
                .returns(4, Version::number)
                .returns(SECOND, Version::draft);
        assertThat(library.restore(job.id(), 2, PHONE))
                .isEqualTo(new Saving.Unchanged(
                        library.findNewest(job.id()).orElseThrow().version()));
        assertThat(library.versions(job.id())).hasSize(4);
    }

    @Test
    void what_is_not_there_is_unknown_and_stays_so() throws FileTrouble {
        Job job = library.create(FIRST, PHONE);
        assertThat(library.save("nosuchjob0", 1, SECOND, PHONE)).isEqualTo(new Saving.Unknown());
        assertThat(library.restore("nosuchjob0", 1, PHONE)).isEqualTo(new Saving.Unknown());
        assertThat(library.restore(job.id(), 2, PHONE)).isEqualTo(new Saving.Unknown());
        assertThat(library.copy("nosuchjob0", PHONE)).isEmpty();
        assertThat(library.put("nosuchjob0", Search.Shelf.ARCHIVED)).isFalse();
        assertThat(library.findNewest("nosuchjob0")).isEmpty();
        assertThat(library.findVersion(job.id(), 2)).isEmpty();
        assertThat(library.versions("nosuchjob0")).isEmpty();
        assertThat(library.count()).isEqualTo(1);
    }

    @Test
    void a_copy_goes_its_own_way() throws FileTrouble {
        Job job = library.create(FIRST, PHONE);
        library.save(job.id(), 1, SECOND, PHONE);
        library.ticks().put(job.id(), "mark 3");
        Job copy = library.copy(job.id(), new By("Desk", "")).orElseThrow();
        assertThat(copy.id()).isNotEqualTo(job.id());
        assertThat(copy.version())
                .returns(1, Version::number)
                .returns(SECOND, Version::draft)
                .returns(new By("Desk", ""), Version::by);
        assertThat(library.ticks().of(copy.id())).isEmpty();
        library.save(copy.id(), 1, FIRST, PHONE);
        assertThat(library.findNewest(job.id()).orElseThrow().version().draft()).isEqualTo(SECOND);
    }

    @Test
    void an_archived_job_is_on_the_other_shelf_with_all_it_has() throws FileTrouble {
        Job job = library.create(FIRST, PHONE);
        Search archive = new Search("", Search.Shelf.ARCHIVED, 10);
        assertThat(library.put(job.id(), Search.Shelf.ARCHIVED)).isTrue();
        assertThat(library.put(job.id(), Search.Shelf.ARCHIVED)).isTrue();
        assertThat(library.list(all())).isEmpty();
        assertThat(library.list(archive))
                .containsExactly(new Job.Line(
                        job.id(),
                        "Stair to the sail loft",
                        "boathouse",
                        1,
                        job.version().saved(),
                        true));
        assertThat(library.findNewest(job.id())).contains(new Job(job.id(), true, job.version()));
        assertThat(library.put(job.id(), Search.Shelf.AT_HAND)).isTrue();
        assertThat(library.list(archive)).isEmpty();
        assertThat(library.findNewest(job.id())).contains(job);
    }

    @Test
    void the_list_begins_with_what_was_saved_last_and_ends_where_it_is_told() throws FileTrouble {
        Job first = library.create(draft("job: one\n"), PHONE);
        Job second = library.create(draft("job: two\n"), PHONE);
        Job third = library.create(draft("job: three\n"), PHONE);
        library.save(first.id(), 1, draft("job: one more\n"), PHONE);
        assertThat(library.list(all())).extracting(Job.Line::id).containsExactly(first.id(), third.id(), second.id());
        assertThat(library.list(new Search("", Search.Shelf.AT_HAND, 2)))
                .extracting(Job.Line::name, Job.Line::version)
                .containsExactly(tuple("one more", 2), tuple("three", 1));
        assertThat(library.list(new Search("", Search.Shelf.AT_HAND, 0))).isEmpty();
    }

    @Test
    void what_was_saved_last_comes_first_even_when_the_clock_was_set_back() throws FileTrouble {
        Job before = library.create(draft("job: before\n"), PHONE);
        try (JobLibrary late = JobLibrary.open(
                folder.resolve("jobs.db"), Clock.fixed(Instant.parse("2001-01-01T00:00:00Z"), ZoneOffset.UTC))) {
            Job after = late.create(draft("job: after\n"), PHONE);
            assertThat(late.list(all())).extracting(Job.Line::id).containsExactly(after.id(), before.id());
        }
    }

    @Test
    void name_and_place_are_read_from_the_text() {
        assertThat(draft(Starter.text()).name()).isEqualTo("Stair, put your name for it here");
        assertThat(draft("job:   Sail loft  \nplace: east gable\n"))
                .returns("Sail loft", Draft::name)
                .returns("east gable", Draft::place);
        assertThat(draft("place: east gable\n")).returns("", Draft::name).returns("east gable", Draft::place);
        assertThat(draft("job: [a, b]\nplace: {a: b}\n"))
                .returns("", Draft::name)
                .returns("", Draft::place);
        assertThat(draft("- job: a\n")).returns("", Draft::name);
        assertThat(draft("job: \"never closed")).returns("", Draft::name);
        assertThat(draft("")).returns("", Draft::name);
        String long200 = "\ud83e\ude9a".repeat(200);
        assertThat(draft("job: " + long200 + "more\n").name()).isEqualTo(long200);
    }

    @Test
    void half_a_sign_is_refused_before_it_can_be_kept_wrongly() {
        assertThatThrownBy(() -> draft("job: \ud83e")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Crew.named("\ude9a", "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Crew.named("", "\ude9a")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new By("\ude9a", "")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new By("", "\ude9a")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_closed_library_does_nothing_more() throws FileTrouble {
        library.close();
        assertThatThrownBy(() -> library.create(FIRST, PHONE)).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> library.count()).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> library.backup(folder.resolve("b.db"))).isInstanceOf(IllegalStateException.class);
        library.close();
    }

    /** Against a power cut no test can be made here; that the disk is waited for can be looked at. */
    @Test
    void a_saving_waits_for_the_disk_and_writes_to_a_log_first() throws FileTrouble {
        assertThat(library.database().<Integer>write(session -> session.number("pragma synchronous")))
                .isEqualTo(2);
        assertThat(library.database().<Integer>write(session -> session.number("pragma foreign_keys")))
                .isEqualTo(1);
        assertThat(library.database()
                        .<List<String>>read(session -> session.rows("pragma journal_mode", row -> row.getString(1))))
                .containsExactly("wal");
    }

    @Test
    void a_saved_version_cannot_be_changed_or_taken_away_even_by_mistake() throws FileTrouble {
        Job job = library.create(FIRST, PHONE);
        assertThatThrownBy(() -> library.database().write(session -> session.run("update version set text = ''")))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("a saved version is never changed");
        assertThatThrownBy(() -> library.database().write(session -> session.run("delete from version")))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("a saved version is never taken away");
        assertThat(library.findNewest(job.id())).contains(job);
    }

    private static Version saved(Saving saving) {
        assertThat(saving).isInstanceOf(Saving.Saved.class);
        return ((Saving.Saved) saving).version();
    }
}
