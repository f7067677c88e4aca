package pitchboard.web.api;

import io.javalin.http.Context;
import java.util.Optional;
import pitchboard.web.guarding.Caller;
import pitchboard.web.jobs.Draft;
import pitchboard.web.jobs.Jobs;
import pitchboard.web.jobs.Kept;
import pitchboard.web.jobs.NotKept;
import pitchboard.web.jobs.Saving;
import pitchboard.web.live.Live;
import pitchboard.web.wire.Refusal;

/** The jobs, as requests name them; whatever is kept here is told to everybody who listens. */
public final class Shelf {
    /** More than a crew builds in a lifetime. */
    public static final int MOST_JOBS = 10_000;

    private static final int FULL = 507;

    private final Jobs jobs;
    private final Live live;

    public Shelf(Jobs jobs, Live live) {
        this.jobs = jobs;
        this.live = live;
    }

    Jobs jobs() {
        return jobs;
    }

    Live live() {
        return live;
    }

    static Refusal noJob() {
        return Refusal.missing("job");
    }

    static String id(Context context) {
        return context.pathParam("id");
    }

    /** The newest version of the job that the path names. */
    Kept newest(Context context) throws Refusal, NotKept {
        return jobs.find(id(context)).orElseThrow(Shelf::noJob);
    }

    /** One version of the job that the path names. */
    Kept version(Context context, String number) throws Refusal, NotKept {
        Optional<Kept> found =
                number.matches("[1-9][0-9]{0,8}") ? jobs.find(id(context), Integer.parseInt(number)) : Optional.empty();
        return found.orElseThrow(() -> Refusal.missing("version of a job"));
    }

    /** Takes in a new job; with the text that it was read from, when there was one. */
    Kept add(Context context, Optional<String> text, Draft draft, String note) throws Refusal, NotKept {
        if (jobs.count() >= MOST_JOBS) {
            throw new Refusal(FULL, "there are " + MOST_JOBS + " jobs already, and no more are kept in one place");
        }
        String device = Caller.of(context).name();
        Kept kept = text.isPresent()
                ? jobs.createFrom(text.get(), draft, device, note)
                : jobs.create(draft, device, note);
        live.listed();
        return kept;
    }

    /** Keeps a new version of the job that the path names. */
    Saving save(Context context, int base, Draft draft, String note) throws Refusal, NotKept {
        String device = Caller.of(context).name();
        Saving saving = jobs.save(id(context), base, draft, device, note)
                .orElseThrow(() -> Refusal.missing("job, or no such version of it to begin from"));
        if (saving instanceof Saving.Done done && done.fresh()) {
            live.saved(id(context), done.version(), device);
            live.listed();
        }
        return saving;
    }
}
