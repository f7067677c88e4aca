package pitchboard.web.api;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.intake.written.YamlWriter;
import pitchboard.store.Notation;
import pitchboard.store.library.Draft;
import pitchboard.store.library.Wording;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;

/**
 * The lines of a job that is kept as text. What came in a file is kept letter for letter; what the page saved is kept as
 * this program's own JSON, and handed out as YAML.
 */
public record WrittenDraft(Written.Group job, Optional<Written.Group> changes) {
    private static final int NOT_UNDERSTOOD = 422;

    /** Reads what is kept. */
    public static WrittenDraft of(Draft draft) throws Refusal {
        Written.Group job = group(draft.job());
        return new WrittenDraft(
                job,
                draft.changes().isPresent() ? Optional.of(group(draft.changes().get())) : Optional.empty());
    }

    private static Written.Group group(Wording wording) throws Refusal {
        Transcript read = wording.read();
        if (read instanceof Transcript.Illegible illegible) {
            throw new Refusal(NOT_UNDERSTOOD, Ask.reasons(illegible.problems()));
        }
        if (((Transcript.Legible) read).written() instanceof Written.Group group) {
            return group;
        }
        Problem shape = new Problem(Spot.START, "", "", "lines such as \"job: Stair to the sail loft\"");
        throw new Refusal(NOT_UNDERSTOOD, Ask.reasons(List.of(shape)));
    }

    /** A job in a file, letter for letter; it may be unfinished, but it has to have the shape of one. */
    static Draft fromFile(String job, Optional<String> changes) throws Refusal {
        Draft draft = Draft.of(wording(job), changes.map(WrittenDraft::wording));
        of(draft);
        return draft;
    }

    /** Without a file's name to tell: a text that begins with a brace is JSON, any other YAML. */
    private static Wording wording(String text) {
        boolean json = text.stripLeading().startsWith("{");
        return new Wording(json ? Notation.JSON : Notation.YAML, text);
    }

    /** The draft to keep. */
    Draft toKeep() {
        return Draft.of(own(job), changes.map(WrittenDraft::own));
    }

    /** Without the line break that ends a file: so it is told from any file that somebody brought. */
    private static Wording own(Written.Group group) {
        return new Wording(Notation.JSON, JsonWriter.write(group).stripTrailing());
    }

    /** The job file to hand out: the very text that came in a file, else YAML. */
    static Wording file(Draft draft) throws Refusal {
        Written.Group job = group(draft.job());
        return draft.job().equals(own(job)) ? new Wording(Notation.YAML, YamlWriter.write(job)) : draft.job();
    }
}
