package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import pitchboard.documents.json.Json;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.Job;
import pitchboard.store.library.Version;
import pitchboard.web.along.AlongPage;
import pitchboard.web.files.PageFiles;
import pitchboard.web.wire.Attachment;
import pitchboard.web.wire.Refusal;

/** A job to take along: one file with the page, the engine and the job inside. */
public final class AlongRoutes {
    private final Shelf shelf;
    private final PageFiles files;

    public AlongRoutes(Shelf shelf, PageFiles files) {
        this.shelf = shelf;
        this.files = files;
    }

    public void add(RoutesConfig routes) {
        routes.get("/api/jobs/{id}/along.html", this::along);
    }

    private void along(Context context) throws Refusal, FileTrouble {
        Job job = shelf.newest(context);
        Version version = job.version();
        Json.Fields fields = Json.object()
                .says("id", job.id())
                .says("name", version.draft().name())
                .with("version", Json.number(version.number()));
        Json held = JobJson.text(fields, WrittenDraft.of(version.draft()));
        Attachment.name(context, "attachment", version.draft().name(), ".html");
        String page = AlongPage.of(files).with(held);
        context.contentType("text/html; charset=utf-8").result(page.getBytes(StandardCharsets.UTF_8));
    }
}
