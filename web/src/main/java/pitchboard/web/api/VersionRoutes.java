package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import pitchboard.documents.json.Json;
import pitchboard.web.jobs.Kept;
import pitchboard.web.jobs.NotKept;
import pitchboard.web.jobs.Past;
import pitchboard.web.jobs.Saving;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** The versions of a job, and going back to one. */
public final class VersionRoutes {
    private static final int CONFLICT = 409;

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

    private void list(Context context) throws Refusal, NotKept {
        List<Past> versions = shelf.jobs().versions(Shelf.id(context));
        if (versions.isEmpty()) {
            throw Shelf.noJob();
        }
        Reply.send(context, Json.object().with("versions", Json.list(versions, JobJson::line)));
    }

    /** Makes a new version like an old one: nothing that was saved is ever lost. */
    private void restore(Context context) throws Refusal, NotKept, IOException {
        int number = Ask.of(context).count("version");
        Kept old = shelf.version(context, Integer.toString(number));
        Kept newest = shelf.newest(context);
        Saving saving = shelf.save(context, newest.version(), old.draft(), "as it was in version " + number);
        if (saving instanceof Saving.Done done) {
            Reply.send(context, JobRoutes.version(done.version()));
        } else {
            throw new Refusal(CONFLICT, "somebody saved this job at the same moment; look at it and try again");
        }
    }
}
