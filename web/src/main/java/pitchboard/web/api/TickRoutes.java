package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import pitchboard.documents.json.Json;
import pitchboard.web.jobs.NotKept;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** What of a job is done: marks and pieces that were ticked off. */
public final class TickRoutes {
    private static final int LONGEST = 80;

    private final Shelf shelf;

    public TickRoutes(Shelf shelf) {
        this.shelf = shelf;
    }

    public void add(RoutesConfig routes) {
        routes.get("/api/jobs/{id}/ticks", this::list);
        routes.put("/api/jobs/{id}/ticks", this::tick);
    }

    private void list(Context context) throws Refusal, NotKept {
        shelf.newest(context);
        List<String> ticks = List.copyOf(shelf.jobs().ticks(Shelf.id(context)));
        Reply.send(context, Json.object().with("ticks", Json.list(ticks, Json::words)));
    }

    private void tick(Context context) throws Refusal, NotKept, IOException {
        Ask ask = Ask.of(context);
        String tick = ask.text("tick", LONGEST);
        boolean done = ask.truth("done");
        if (!shelf.jobs().tick(Shelf.id(context), tick, done)) {
            throw Shelf.noJob();
        }
        shelf.live().ticked(Shelf.id(context), tick, done);
        Reply.send(context, Json.object().says("tick", tick).with("done", Json.truth(done)));
    }
}
