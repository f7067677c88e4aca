package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pitchboard.documents.json.Json;
import pitchboard.web.guarding.Door;
import pitchboard.web.jobs.Jobs;
import pitchboard.web.jobs.NotKept;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** What others save, as it happens; and a copy of everything. */
public final class LiveRoutes {
    private final Shelf shelf;

    public LiveRoutes(Shelf shelf) {
        this.shelf = shelf;
    }

    public void add(RoutesConfig routes) {
        routes.sse("/api/live", shelf.live()::listen);
        routes.post("/api/backup", this::backup);
    }

    private void backup(Context context) throws Refusal, NotKept {
        Door.onlyHere(context);
        Jobs.Copied copied = shelf.jobs().backup();
        Reply.send(
                context,
                Json.object().says("file", copied.file()).with("bytes", Json.number(copied.bytes())));
    }
}
