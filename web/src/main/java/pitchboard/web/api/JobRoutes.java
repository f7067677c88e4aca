package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.Written;
import pitchboard.web.jobs.Draft;
import pitchboard.web.jobs.Kept;
import pitchboard.web.jobs.NotKept;
import pitchboard.web.jobs.Saving;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** The list of jobs, and each job: made, opened, saved, copied, put away. */
public final class JobRoutes {
    private static final int CREATED = 201;
    private static final int CONFLICT = 409;
    private static final int LONGEST_NAME = 200;

    private final Shelf shelf;

    public JobRoutes(Shelf shelf) {
        this.shelf = shelf;
    }

    public void add(RoutesConfig routes) {
        routes.get("/api/jobs", this::list);
        routes.post("/api/jobs", this::create);
        routes.get("/api/jobs/{id}", context -> Reply.send(context, JobJson.whole(shelf.newest(context))));
        routes.put("/api/jobs/{id}", this::save);
        routes.post("/api/jobs/{id}/copy", this::copy);
        routes.post("/api/jobs/{id}/archive", this::archive);
    }

    private void list(Context context) throws NotKept {
        String search = Optional.ofNullable(context.queryParam("search")).orElse("");
        boolean archived = "yes".equals(context.queryParam("archived"));
        Reply.send(
                context,
                Json.object().with("jobs", Json.list(shelf.jobs().list(search.strip(), archived), JobJson::line)));
    }

    private void create(Context context) throws Refusal, NotKept, IOException {
        Ask ask = Ask.of(context);
        Optional<String> file = ask.findText("file");
        if (file.isPresent()) {
            created(context, shelf.add(context, file, Imported.draft(file.get(), ask.findText("changes")), "taken in from a file"));
            return;
        }
        switch (ask.findText("from").orElse("")) {
            case "demo" -> created(context, shelf.add(context, Optional.of(Demo.text()), Demo.draft(), "the example"));
            case "blank" -> created(context, shelf.add(context, Optional.empty(), blank(ask), ""));
            default -> throw Ask.wrong("from", "\"demo\" or \"blank\", or a line \"file\" with a job file");
        }
    }

    private static Draft blank(Ask ask) throws Refusal {
        String name = ask.findText("name").isPresent() ? ask.text("name", LONGEST_NAME) : "";
        List<Written.Entry> lines =
                name.isBlank() ? List.of() : List.of(new Written.Entry("job", new Written.Text(name.strip())));
        return new Draft(new Written.Group(pitchboard.intake.written.Spot.NOWHERE, lines), Optional.empty());
    }

    private static void created(Context context, Kept job) {
        Reply.send(
                context.status(CREATED),
                Json.object().says("id", job.id()).with("version", Json.number(job.version())));
    }

    private void save(Context context) throws Refusal, NotKept, IOException {
        Ask ask = Ask.of(context);
        Draft draft = new Draft(ask.group("job"), ask.findGroup("changes"));
        Saving saving = shelf.save(context, ask.count("base"), draft, "");
        if (saving instanceof Saving.Behind behind) {
            Reply.send(context.status(CONFLICT), JobJson.behind(behind.newest(), behind.base()));
        } else {
            Reply.send(context, version(((Saving.Done) saving).version()));
        }
    }

    static Json version(int version) {
        return Json.object().with("version", Json.number(version));
    }

    private void copy(Context context) throws Refusal, NotKept {
        Kept original = shelf.newest(context);
        String name = original.draft().line("job");
        String note = name.isEmpty() ? "a copy" : "a copy of " + name;
        created(context, shelf.add(context, Optional.empty(), original.draft(), note));
    }

    private void archive(Context context) throws Refusal, NotKept, IOException {
        boolean archived = Ask.of(context).truth("archived");
        if (!shelf.jobs().archive(Shelf.id(context), archived)) {
            throw Shelf.noJob();
        }
        shelf.live().listed();
        Reply.send(context, Json.object().with("archived", Json.truth(archived)));
    }
}
