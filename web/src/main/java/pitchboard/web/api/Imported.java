package pitchboard.web.api;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.store.JobFiles;
import pitchboard.web.jobs.Draft;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;

/** Jobs from the text of a job file, YAML or JSON; they may be unfinished, but they have to have the shape of one. */
final class Imported {
    private static final int NOT_UNDERSTOOD = 422;

    private Imported() {}

    static Draft draft(String file, Optional<String> changes) throws Refusal {
        Written.Group job = group(file);
        return new Draft(job, changes.isPresent() ? Optional.of(group(changes.get())) : Optional.empty());
    }

    private static Written.Group group(String text) throws Refusal {
        Transcript read = JobFiles.transcript(text);
        if (read instanceof Transcript.Illegible illegible) {
            throw new Refusal(NOT_UNDERSTOOD, Ask.reasons(illegible.problems()));
        }
        if (((Transcript.Legible) read).written().anywhere() instanceof Written.Group group) {
            return group;
        }
        Problem shape = new Problem(Spot.START, "", "", "lines such as \"job: Stair to the sail loft\"");
        throw new Refusal(NOT_UNDERSTOOD, Ask.reasons(List.of(shape)));
    }
}
