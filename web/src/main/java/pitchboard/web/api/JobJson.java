package pitchboard.web.api;

import pitchboard.documents.json.Json;
import pitchboard.store.library.Job;
import pitchboard.store.library.Version;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** Jobs as the page gets them. */
public final class JobJson {
    private JobJson() {}

    static Json line(Job.Line job) {
        return Json.object()
                .says("id", job.id())
                .says("name", job.name())
                .says("place", job.place())
                .with("version", Json.number(job.version()))
                .says("saved", job.saved().toString())
                .with("archived", Json.truth(job.archived()));
    }

    static Json line(Version.Line version) {
        return Json.object()
                .with("version", Json.number(version.number()))
                .says("saved", version.saved().toString())
                .says("device", version.by().device())
                .says("note", version.by().note());
    }

    static Json number(Version version) {
        return Json.object().with("version", Json.number(version.number()));
    }

    /** A whole version; without the line {@code changes} when the job has no local changes. */
    static Json whole(Job job) throws Refusal {
        Version version = job.version();
        Json.Fields fields = Json.object()
                .says("id", job.id())
                .with("version", Json.number(version.number()))
                .says("saved", version.saved().toString())
                .with("archived", Json.truth(job.archived()));
        return text(fields, WrittenDraft.of(version.draft()));
    }

    /** What somebody who is behind needs to put both together. */
    static Json behind(Version newest, Version base) throws Refusal {
        Json.Fields fields = Json.object().with("version", Json.number(newest.number()));
        return text(fields, WrittenDraft.of(newest.draft()))
                .with("base", Reply.written(WrittenDraft.of(base.draft()).job()));
    }

    /** The job and its local changes. */
    public static Json.Fields text(Json.Fields fields, WrittenDraft draft) {
        fields.with("job", Reply.written(draft.job()));
        draft.changes().ifPresent(changes -> fields.with("changes", Reply.written(changes)));
        return fields;
    }
}
