package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.store.FileTrouble;

final class TicksTest {
    @TempDir
    Path folder;

    @Test
    void a_check_off_is_kept_once_and_can_be_taken_back() throws FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            String job = library.create(Crew.draft("job: a\n"), Crew.PHONE).id();
            String other = library.create(Crew.draft("job: b\n"), Crew.PHONE).id();
            Ticks ticks = library.ticks();
            assertThat(ticks.put(job, "mark 10")).isTrue();
            assertThat(ticks.put(job, "mark 3")).isTrue();
            assertThat(ticks.put(job, "mark 10")).isTrue();
            assertThat(ticks.of(job))
                    .containsExactly(
                            new Tick("mark 10", Crew.MORNING.plusSeconds(2)),
                            new Tick("mark 3", Crew.MORNING.plusSeconds(3)));
            assertThat(ticks.of(other)).isEmpty();
            assertThat(ticks.remove(job, "mark 10")).isTrue();
            assertThat(ticks.remove(job, "mark 10")).isTrue();
            assertThat(ticks.of(job)).extracting(Tick::name).containsExactly("mark 3");
        }
    }

    @Test
    void they_stay_when_the_job_is_saved_again() throws FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            String job = library.create(Crew.draft("job: a\n"), Crew.PHONE).id();
            library.ticks().put(job, "heel");
            library.save(job, 1, Crew.draft("job: b\n"), Crew.PHONE);
            library.restore(job, 1, Crew.PHONE);
            assertThat(library.ticks().of(job)).extracting(Tick::name).containsExactly("heel");
        }
    }

    @Test
    void a_job_that_is_not_there_has_none() throws FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            assertThat(library.ticks().put("nosuchjob0", "heel")).isFalse();
            assertThat(library.ticks().remove("nosuchjob0", "heel")).isFalse();
            assertThat(library.ticks().of("nosuchjob0")).isEmpty();
        }
    }
}
