package pitchboard.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.intake.LocalChanges;
import pitchboard.intake.Notes;
import pitchboard.intake.written.Problem;

/** What came of opening a job file and the local changes it names. */
public sealed interface JobFile {
    /**
     * All of it could be read.
     *
     * @param changes the local changes; empty when the file names none
     */
    record Understood(Path file, Notes notes, Optional<Changes> changes) implements JobFile {}

    /**
     * Local changes, and the file they were read from.
     *
     * @param base the changes these come on top of; empty when they are based on the rulebook itself
     */
    record Changes(Path file, LocalChanges local, Optional<Changes> base) {
        /** Each file by itself: the one based on the rulebook first, the one that the job names last. */
        public List<Changes> fromTheBookUp() {
            List<Changes> all = new ArrayList<>(base.map(Changes::fromTheBookUp).orElse(List.of()));
            all.add(this);
            return all;
        }

        /** All of them as one, in which a file holds over those it is based on. */
        public LocalChanges together() {
            return base.map(below -> local.over(below.together())).orElse(local);
        }
    }

    /**
     * Nothing of it can be used.
     *
     * @param file the one that has the problems: the job file, or the file of local changes
     * @param problems at least one, in the order of the text
     */
    record NotUnderstood(Path file, List<Problem> problems) implements JobFile {
        public NotUnderstood {
            problems = List.copyOf(problems);
        }
    }

    default <T> T match(
            Function<? super Understood, ? extends T> understood,
            Function<? super NotUnderstood, ? extends T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
