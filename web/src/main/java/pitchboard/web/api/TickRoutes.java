package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import pitchboard.documents.json.Json;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.Tick;
import pitchboard.store.library.Ticks;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** What of a job is done: marks and pieces that were ticked off. */
public final class TickRoutes {
    private static final int LONGEST = 80;
    /** Ten times what a stair with fifty risers has to tick off. */
    private static final int MOST = 2_000;

    private static final int TOO_MANY = 422;

    private final Shelf shelf;

    public TickRoutes(Shelf shelf) {
        this.shelf = shelf;
    }

    public void add(RoutesConfig routes) {
        routes.get("/api/jobs/{id}/ticks", this::list);
        routes.put("/api/jobs/{id}/ticks", this::tick);
    }

    private void list(Context context) throws Refusal, FileTrouble {
        shelf.newest(context);
        List<Tick> ticks = shelf.library().ticks().of(Shelf.id(context));
        Reply.send(context, Json.object().with("ticks", Json.list(ticks, tick -> Json.words(tick.name()))));
    }

    private void tick(Context context) throws Refusal, FileTrouble, IOException {
        Ask ask = Ask.of(context);
        String name = ask.text("tick", LONGEST);
        boolean done = ask.truth("done");
        Ticks ticks = shelf.library().ticks();
        if (done && ticks.of(Shelf.id(context)).size() >= MOST) {
            throw new Refusal(TOO_MANY, "more than " + MOST + " things are ticked off in this job already");
        }
        if (!(done ? ticks.put(Shelf.id(context), name) : ticks.remove(Shelf.id(context), name))) {
            throw Shelf.noJob();
        }
        shelf.live().ticked(Shelf.id(context), name, done);
        Reply.send(context, Json.object().says("tick", name).with("done", Json.truth(done)));
    }
}
