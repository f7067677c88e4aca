package pitchboard.web.jobs;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Jobs kept as long as the program runs. */
public final class MemoryJobs implements Jobs {
    private record Version(Kept kept, Past past, Optional<String> text) {}

    private static final class Job {
        private final List<Version> versions = new ArrayList<>();
        private final Set<String> ticks = new LinkedHashSet<>();
        private boolean archived;

        Version newest() {
            return versions.get(versions.size() - 1);
        }

        Kept kept(int version) {
            Kept kept = versions.get(version - 1).kept();
            return new Kept(kept.id(), kept.version(), kept.saved(), archived, kept.draft());
        }
    }

    private final Map<String, Job> jobs = new LinkedHashMap<>();

    @Override
    public synchronized List<Listed> list(String search, boolean archived) {
        String wanted = search.toLowerCase(Locale.ROOT);
        return jobs.values().stream()
                .filter(job -> job.archived == archived)
                .map(job -> job.kept(job.versions.size()))
                .map(kept -> new Listed(
                        kept.id(),
                        kept.draft().line("job"),
                        kept.draft().line("place"),
                        kept.version(),
                        kept.saved(),
                        kept.archived()))
                .filter(line ->
                        (line.name() + "\n" + line.place()).toLowerCase(Locale.ROOT).contains(wanted))
                .sorted(Comparator.comparing(Listed::saved).reversed())
                .toList();
    }

    @Override
    public synchronized int count() {
        return jobs.size();
    }

    @Override
    public synchronized Kept create(Draft draft, String device, String note) {
        return add(draft, device, note, Optional.empty());
    }

    @Override
    public synchronized Kept createFrom(String text, Draft draft, String device, String note) {
        return add(draft, device, note, Optional.of(text));
    }

    private Kept add(Draft draft, String device, String note, Optional<String> text) {
        String id = "j" + (jobs.size() + 1);
        Job job = new Job();
        jobs.put(id, job);
        return push(id, job, draft, device, note, text);
    }

    private static Kept push(String id, Job job, Draft draft, String device, String note, Optional<String> text) {
        Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
        Kept kept = new Kept(id, job.versions.size() + 1, now, job.archived, draft);
        job.versions.add(new Version(kept, new Past(kept.version(), now, device, note), text));
        return kept;
    }

    @Override
    public synchronized Optional<Kept> find(String id) {
        return Optional.ofNullable(jobs.get(id)).map(job -> job.kept(job.versions.size()));
    }

    @Override
    public synchronized Optional<Kept> find(String id, int version) {
        return Optional.ofNullable(jobs.get(id))
                .filter(job -> version >= 1 && version <= job.versions.size())
                .map(job -> job.kept(version));
    }

    @Override
    public synchronized Optional<String> findText(String id, int version) {
        return find(id, version).flatMap(kept -> jobs.get(id).versions.get(version - 1).text());
    }

    @Override
    public synchronized Optional<Saving> save(String id, int base, Draft draft, String device, String note) {
        if (find(id, base).isEmpty()) {
            return Optional.empty();
        }
        Job job = jobs.get(id);
        Kept newest = job.newest().kept();
        if (newest.draft().equals(draft)) {
            return Optional.of(new Saving.Done(newest.version(), false));
        }
        if (newest.version() != base) {
            return Optional.of(new Saving.Behind(newest, job.kept(base)));
        }
        Kept kept = push(id, job, draft, device, note, Optional.empty());
        return Optional.of(new Saving.Done(kept.version(), true));
    }

    @Override
    public synchronized boolean archive(String id, boolean archived) {
        Optional<Job> job = Optional.ofNullable(jobs.get(id));
        job.ifPresent(found -> found.archived = archived);
        return job.isPresent();
    }

    @Override
    public synchronized List<Past> versions(String id) {
        List<Past> past = new ArrayList<>();
        Optional.ofNullable(jobs.get(id))
                .ifPresent(job -> job.versions.forEach(version -> past.add(0, version.past())));
        return past;
    }

    @Override
    public synchronized Set<String> ticks(String id) {
        return Optional.ofNullable(jobs.get(id))
                .<Set<String>>map(job -> new LinkedHashSet<>(job.ticks))
                .orElse(Set.of());
    }

    @Override
    public synchronized boolean tick(String id, String tick, boolean done) {
        Optional<Job> job = Optional.ofNullable(jobs.get(id));
        job.ifPresent(found -> {
            if (done) {
                found.ticks.add(tick);
            } else {
                found.ticks.remove(tick);
            }
        });
        return job.isPresent();
    }

    @Override
    public Copied backup() throws NotKept {
        throw new NotKept("jobs are kept in memory only", new UnsupportedOperationException());
    }
}
