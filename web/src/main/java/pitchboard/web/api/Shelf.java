package pitchboard.web.api;

import io.javalin.http.Context;
import java.util.Optional;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.By;
import pitchboard.store.library.Draft;
import pitchboard.store.library.Job;
import pitchboard.store.library.JobLibrary;
import pitchboard.store.library.Saving;
import pitchboard.store.library.Version;
import pitchboard.web.guarding.Caller;
import pitchboard.web.live.Live;
import pitchboard.web.wire.Refusal;

/** The jobs, as requests name them; whatever is kept here is told to everybody who listens. */
public final class Shelf {
    private static final int FULL = 507;

    private final JobLibrary library;
    private final Live live;
    private final int mostJobs;

    /**
     * A shelf.
     *
     * @param mostJobs no more are taken in
     */
    public Shelf(JobLibrary library, Live live, int mostJobs) {
        this.library = library;
        this.live = live;
        this.mostJobs = mostJobs;
    }

    JobLibrary library() {
        return library;
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

    static By by(Context context, String note) {
        return new By(Caller.of(context).name(), note);
    }

    /** The job that the path names, in its newest version. */
    public Job newest(Context context) throws Refusal, FileTrouble {
        return library.findNewest(id(context)).orElseThrow(Shelf::noJob);
    }

    /** The job that the path names, in one of its versions. */
    Job version(Context context, String number) throws Refusal, FileTrouble {
        Optional<Job> found = number.matches("[1-9][0-9]{0,8}")
                ? library.findVersion(id(context), Integer.parseInt(number))
                : Optional.empty();
        return found.orElseThrow(() -> Refusal.missing("version of a job"));
    }

    /** Refuses when there is no room for one more. */
    void requireRoom() throws Refusal, FileTrouble {
        if (library.count() >= mostJobs) {
            throw new Refusal(FULL, "there are " + mostJobs + " jobs already, and no more are kept in one place");
        }
    }

    /** Takes in a new job. */
    Job add(Context context, Draft draft, String note) throws Refusal, FileTrouble {
        requireRoom();
        Job job = library.create(draft, by(context, note));
        live.listed();
        return job;
    }

    /** Tells everybody when there is a new version, and gives the newest; empty when somebody else was quicker. */
    Optional<Version> kept(Context context, Saving saving) throws Refusal {
        if (saving instanceof Saving.Saved saved) {
            live.saved(id(context), saved.version().number(), Caller.of(context).name());
            live.listed();
        }
        if (saving instanceof Saving.Unknown) {
            throw Refusal.missing("job, or no such version of it");
        }
        return saving.match(
                saved -> Optional.of(saved.version()),
                unchanged -> Optional.of(unchanged.version()),
                conflict -> Optional.empty(),
                unknown -> Optional.empty());
    }
}
