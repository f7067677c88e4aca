package pitchboard.web.api;

import pitchboard.documents.json.Json;
import pitchboard.web.jobs.Draft;
import pitchboard.web.jobs.Kept;
import pitchboard.web.jobs.Listed;
import pitchboard.web.jobs.Past;
import pitchboard.web.wire.Reply;

/** Jobs as the page gets them. */
public final class JobJson {
    private JobJson() {}

    static Json line(Listed job) {
        return Json.object()
                .says("id", job.id())
                .says("name", job.name())
                .says("place", job.place())
                .with("version", Json.number(job.version()))
                .says("saved", job.saved().toString())
                .with("archived", Json.truth(job.archived()));
    }

    static Json line(Past version) {
        return Json.object()
                .with("version", Json.number(version.version()))
                .says("saved", version.saved().toString())
                .says("device", version.device())
                .says("note", version.note());
    }

    /** A whole version; without the line {@code changes} when the job has no local changes. */
    static Json whole(Kept job) {
        Json.Fields fields = Json.object()
                .says("id", job.id())
                .with("version", Json.number(job.version()))
                .says("saved", job.saved().toString())
                .with("archived", Json.truth(job.archived()));
        return draft(fields, job.draft());
    }

    static Json.Fields draft(Json.Fields fields, Draft draft) {
        fields.with("job", Reply.written(draft.job()));
        draft.changes().ifPresent(changes -> fields.with("changes", Reply.written(changes)));
        return fields;
    }

    /** What somebody who is behind needs to put both together. */
    static Json behind(Kept newest, Kept base) {
        Json.Fields fields = Json.object().with("version", Json.number(newest.version()));
        return draft(fields, newest.draft())
                .with("base", Reply.written(base.draft().job()));
    }
}
