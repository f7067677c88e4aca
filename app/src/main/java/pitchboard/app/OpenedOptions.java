package pitchboard.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pitchboard.intake.offers.Offered;
import pitchboard.intake.offers.OfferedText;
import pitchboard.job.Job;
import pitchboard.store.FileTrouble;
import pitchboard.store.OfferFiles;

/** What came of opening a file of options and the jobs it names: all of it, or everything that is wrong with it. */
public sealed interface OpenedOptions {
    /** @param jobs one for each way */
    record Understood(Offered offered, List<Job> jobs) implements OpenedOptions {
        public Understood {
            jobs = List.copyOf(jobs);
        }
    }

    /**
     * Nothing of it can be used.
     *
     * @param troubles at least one
     */
    record NotUnderstood(List<Trouble> troubles) implements OpenedOptions {
        public NotUnderstood {
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * Opens a file of options and every job.
     *
     * @throws FileTrouble when one of the files cannot be read
     */
    static OpenedOptions open(Path file) throws FileTrouble {
        OfferedText text = OfferFiles.open(file);
        if (text instanceof OfferedText.NotUnderstood bad) {
            return new NotUnderstood(bad.problems().stream()
                    .map(problem -> Trouble.of(file, problem))
                    .toList());
        }
        Offered offered = ((OfferedText.Understood) text).offered();
        // Two options may begin with one job; what is wrong with it is told once.
        Set<Trouble> troubles = new LinkedHashSet<>();
        List<Job> jobs = new ArrayList<>();
        for (Offered.Way way : offered.ways()) {
            open(file, way, troubles, jobs);
        }
        return troubles.isEmpty() ? new Understood(offered, jobs) : new NotUnderstood(List.copyOf(troubles));
    }

    private static void open(Path file, Offered.Way way, Set<Trouble> troubles, List<Job> jobs) throws FileTrouble {
        Path job = file.resolveSibling(way.job()).normalize();
        OpenedJob plain = Jobs.open(job);
        if (plain instanceof OpenedJob.NotUnderstood bad) {
            troubles.addAll(bad.troubles());
            return;
        }
        OpenedJob opened =
                way.changes().isPresent() ? Jobs.openChanged(job, way.changes().get()) : plain;
        if (opened instanceof OpenedJob.NotUnderstood bad) {
            bad.troubles().forEach(trouble -> troubles.add(inTheChanges(file, way, trouble)));
            return;
        }
        jobs.add(((OpenedJob.Understood) opened).job());
    }

    /** The job is sound without the changes, so whatever is wrong comes of them. */
    private static Trouble inTheChanges(Path file, Offered.Way way, Trouble trouble) {
        boolean placed = trouble.line() > 0;
        return new Trouble(
                file,
                placed ? trouble.line() : way.at().line(),
                placed ? trouble.column() : way.at().column(),
                "option `" + way.name() + "`: " + trouble.words());
    }
}
