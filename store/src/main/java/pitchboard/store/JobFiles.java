package pitchboard.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.ChangesText;
import pitchboard.intake.JobText;
import pitchboard.intake.Notes;
import pitchboard.intake.offers.Overlay;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;

/** Job files and files of local changes on disk. */
public final class JobFiles {
    private JobFiles() {}

    /**
     * Opens a job file and the local changes it names.
     *
     * @param rulebooks the names a rulebook can have; empty when any name will do
     * @throws FileTrouble when either file is missing or cannot be read
     */
    public static JobFile open(Path file, List<String> rulebooks) throws FileTrouble {
        return open(file, WrittenFile.read(file), rulebooks);
    }

    /**
     * Opens a job file with other lines before its own.
     *
     * @param rulebooks the names a rulebook can have
     * @throws FileTrouble when either file is missing or cannot be read
     */
    public static JobFile openChanged(Path file, Written.Group changes, List<String> rulebooks) throws FileTrouble {
        Transcript changed = WrittenFile.read(file)
                .match(good -> new Transcript.Legible(Overlay.over(good.written(), changes)), bad -> bad);
        return open(file, changed, rulebooks);
    }

    private static JobFile open(Path file, Transcript transcript, List<String> rulebooks) throws FileTrouble {
        JobText text = JobText.of(transcript, rulebooks);
        if (text instanceof JobText.Understood understood) {
            return withChanges(file, understood.notes());
        }
        return new JobFile.NotUnderstood(file, ((JobText.NotUnderstood) text).problems());
    }

    private static JobFile withChanges(Path file, Notes notes) throws FileTrouble {
        if (notes.localChanges().isEmpty()) {
            return new JobFile.Understood(file, notes, Optional.empty());
        }
        Path changes = file.resolveSibling(notes.localChanges().get()).normalize();
        return new ChangesChain(file, notes).open(changes);
    }

    /**
     * Opens a file of local changes.
     *
     * @param rulebooks the names a rulebook can have; empty when any name will do
     * @throws FileTrouble when the file is missing or cannot be read
     */
    public static ChangesText openChanges(Path file, List<String> rulebooks) throws FileTrouble {
        return ChangesText.of(WrittenFile.read(file), rulebooks);
    }

    /**
     * Writes a job: as JSON when the file's name ends in {@code .json}, as YAML otherwise.
     *
     * @throws FileTrouble when it cannot be written; whatever stood there before still does
     */
    public static void save(Path file, Notes notes) throws FileTrouble {
        AtomicWrite.text(file, Notation.of(file).write(JobText.write(notes)));
    }
}
