package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import pitchboard.documents.json.Json;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.Saving;
import pitchboard.store.library.Version;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** The versions of a job, and going back to one. */
public final class VersionRoutes {
    private final Shelf shelf;

    public VersionRoutes(Shelf shelf) {
        this.shelf = shelf;
    }

    public void add(RoutesConfig routes) {
        routes.get("/api/jobs/{id}/versions", this::list);
        routes.get(
                "/api/jobs/{id}/versions/{number}",
                context -> Reply.send(context, JobJson.whole(shelf.version(context, context.pathParam("number")))));
        routes.post("/api/jobs/{id}/restore", this::restore);
    }

    private void list(Context context) throws Refusal, FileTrouble {
        List<Version.Line> versions = shelf.library().versions(Shelf.id(context));
        if (versions.isEmpty()) {
            throw Shelf.noJob();
        }
        Reply.send(context, Json.object().with("versions", Json.list(versions, JobJson::line)));
    }

    /** Makes a new version like an old one: nothing that was saved is ever lost. */
    private void restore(Context context) throws Refusal, FileTrouble, IOException {
        int number = Ask.of(context).count("version");
        Saving saving =
                shelf.library().restore(Shelf.id(context), number, Shelf.by(context, "as it was in version " + number));
        Reply.send(context, JobJson.number(shelf.kept(context, saving).orElseThrow()));
    }
}
