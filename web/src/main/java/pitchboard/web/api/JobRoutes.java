package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.Draft;
import pitchboard.store.library.Job;
import pitchboard.store.library.Saving;
import pitchboard.store.library.Search;
import pitchboard.store.library.Version;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** The list of jobs, and each job: made, opened, saved, copied, put away. */
public final class JobRoutes {
    private static final int CREATED = 201;
    private static final int CONFLICT = 409;
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_LIST = 10_000;

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

    private void list(Context context) throws FileTrouble {
        String words = Optional.ofNullable(context.queryParam("search")).orElse("");
        Search search = new Search(words, place("yes".equals(context.queryParam("archived"))), LONGEST_LIST);
        List<Job.Line> jobs = shelf.library().list(search);
        Reply.send(context, Json.object().with("jobs", Json.list(jobs, JobJson::line)));
    }

    private static Search.Shelf place(boolean archived) {
        return archived ? Search.Shelf.ARCHIVED : Search.Shelf.AT_HAND;
    }

    private void create(Context context) throws Refusal, FileTrouble, IOException {
        Ask ask = Ask.of(context);
        Optional<String> file = ask.findText("file");
        if (file.isPresent()) {
            Draft draft = WrittenDraft.fromFile(file.get(), ask.findText("changes"));
            created(context, shelf.add(context, draft, "taken in from a file"));
            return;
        }
        switch (ask.findText("from").orElse("")) {
            case "demo" -> created(context, shelf.add(context, Demo.draft(), "the example"));
            case "blank" -> created(context, shelf.add(context, blank(ask), ""));
            default -> throw Ask.wrong("from", "\"demo\" or \"blank\", or a line \"file\" with a job file");
        }
    }

    private static Draft blank(Ask ask) throws Refusal {
        String name = ask.findText("name").isPresent()
                ? ask.text("name", LONGEST_NAME).strip()
                : "";
        List<Written.Entry> lines =
                name.isEmpty() ? List.of() : List.of(new Written.Entry("job", new Written.Text(name)));
        return new WrittenDraft(new Written.Group(Spot.NOWHERE, lines), Optional.empty()).toKeep();
    }

    private static void created(Context context, Job job) {
        Reply.send(
                context.status(CREATED),
                Json.object()
                        .says("id", job.id())
                        .with("version", Json.number(job.version().number())));
    }

    private void save(Context context) throws Refusal, FileTrouble, IOException {
        Ask ask = Ask.of(context);
        int base = ask.count("base");
        Draft draft = new WrittenDraft(ask.group("job"), ask.findGroup("changes")).toKeep();
        Version from = shelf.version(context, Integer.toString(base)).version();
        Saving saving = shelf.library().save(Shelf.id(context), base, draft, Shelf.by(context, ""));
        Optional<Version> kept = shelf.kept(context, saving);
        if (kept.isPresent()) {
            Reply.send(context, JobJson.number(kept.get()));
        } else {
            Reply.send(context.status(CONFLICT), JobJson.behind(((Saving.Conflict) saving).newest(), from));
        }
    }

    private void copy(Context context) throws Refusal, FileTrouble {
        shelf.requireRoom();
        String name = shelf.newest(context).version().draft().name();
        String note = name.isBlank() ? "a copy" : "a copy of " + name;
        Job copy =
                shelf.library().copy(Shelf.id(context), Shelf.by(context, note)).orElseThrow(Shelf::noJob);
        shelf.live().listed();
        created(context, copy);
    }

    private void archive(Context context) throws Refusal, FileTrouble, IOException {
        boolean archived = Ask.of(context).truth("archived");
        if (!shelf.library().put(Shelf.id(context), place(archived))) {
            throw Shelf.noJob();
        }
        shelf.live().listed();
        Reply.send(context, Json.object().with("archived", Json.truth(archived)));
    }
}
