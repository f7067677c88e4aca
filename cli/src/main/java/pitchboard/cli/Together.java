package pitchboard.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.app.JobFolder;
import pitchboard.app.OpenedYard;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.job.Purchase;
import pitchboard.store.FileTrouble;

/**
 * Several jobs bought together from one price list, for the commands that begin so.
 *
 * @param purchase empty when there is none, which was told
 * @param code of the exit, when there is none
 */
record Together(Optional<Purchase> purchase, int code) {
    private static final int MOST_JOBS = 26;

    /** Opens, solves and buys; what cannot be understood, and stairs that cannot be, are told. */
    static Together of(Desk desk, List<Path> files, Path yard) throws FileTrouble {
        if (files.size() > MOST_JOBS) {
            desk.say(files.size() + " job files; at most " + MOST_JOBS + " are bought together");
            return new Together(Optional.empty(), ExitCode.NOT_UNDERSTOOD);
        }
        Optional<OpenedYard.Understood> prices = desk.openYard(yard);
        List<Job> jobs = new ArrayList<>();
        for (Path file : files) {
            desk.open(file).ifPresent(jobs::add);
        }
        if (prices.isEmpty() || jobs.size() < files.size()) {
            return new Together(Optional.empty(), ExitCode.NOT_UNDERSTOOD);
        }
        List<Outcome.Designed> designed = designed(desk, files, jobs);
        if (designed.size() < jobs.size()) {
            return new Together(Optional.empty(), ExitCode.FAILING);
        }
        Purchase purchase =
                Purchase.of(designed, prices.get().yard(), prices.get().text());
        return new Together(Optional.of(purchase), ExitCode.DONE);
    }

    private static List<Outcome.Designed> designed(Desk desk, List<Path> files, List<Job> jobs) {
        List<Outcome.Designed> all = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            if (Pipeline.solve(jobs.get(i)) instanceof Outcome.Designed designed) {
                all.add(designed);
            } else {
                desk.say(files.get(i) + ": no stair fits, so there is nothing to buy; see: pitchboard choices "
                        + files.get(i));
            }
        }
        return all;
    }

    /** The beginning of the names of what is written. */
    static String name(List<Path> files) {
        return files.size() == 1 ? JobFolder.stem(files.get(0)) : "together";
    }
}
