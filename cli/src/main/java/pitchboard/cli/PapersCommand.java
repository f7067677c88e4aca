package pitchboard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pitchboard.app.JobFolder;
import pitchboard.app.Papers;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.store.FileTrouble;

/** The papers of one job or of many. */
@Command(
        name = "papers",
        description = "Draws the papers of each job: one PDF, and every sheet as an SVG at true scale.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExamples:%n",
        footer = {
            "  pitchboard papers examples/boathouse-loft.yaml --to papers",
            "  pitchboard papers examples --to papers",
            "",
            "Print at actual size (100 %%), and measure the ruler on the true-size sheets before you cut."
        })
final class PapersCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "job files, or folders of job files")
    private List<Path> files;

    @Option(
            names = "--to",
            required = true,
            paramLabel = "DIR",
            description =
                    "the folder for the papers; it is made when missing, and files of the same names are replaced")
    private Path folder;

    @Override
    public Integer call() {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        List<Path> jobs = new ArrayList<>();
        int worst = gather(desk, jobs);
        for (int i = 0; i < jobs.size(); i++) {
            worst = Math.max(
                    worst, papers(desk, jobs.get(i), jobs.size() == 1 ? "" : (i + 1) + " of " + jobs.size() + "  "));
        }
        return worst;
    }

    private int gather(Desk desk, List<Path> jobs) {
        int worst = ExitCode.DONE;
        for (Path file : files) {
            if (!Files.isDirectory(file)) {
                jobs.add(file);
                continue;
            }
            try {
                List<Path> found = JobFolder.list(file);
                jobs.addAll(found);
                if (found.isEmpty()) {
                    desk.say(file + ": there is no job file in this folder (.yaml, .yml or .json)");
                    worst = ExitCode.NOT_UNDERSTOOD;
                }
            } catch (IOException trouble) {
                desk.say(file + ": the folder cannot be read");
                worst = ExitCode.NO_ACCESS;
            }
        }
        return worst;
    }

    /** One job's trouble does not stop the others. */
    private int papers(Desk desk, Path file, String progress) {
        try {
            Optional<Job> job = desk.open(file);
            return job.isEmpty() ? ExitCode.NOT_UNDERSTOOD : papers(desk, file, job.get(), progress);
        } catch (FileTrouble trouble) {
            return Troubles.tell(trouble, desk.messages());
        }
    }

    private int papers(Desk desk, Path file, Job job, String progress) throws FileTrouble {
        Outcome outcome = Pipeline.solve(job);
        String name = JobFolder.stem(file);
        if (outcome instanceof Outcome.Designed designed) {
            int sheets = Papers.write(designed, name, folder);
            String failing = failing(designed);
            desk.say(progress + name + ": " + sheets + " sheets" + failing);
            desk.print(folder.resolve(name + ".pdf") + "\n");
        } else {
            desk.say(progress + name + ": no stair fits, so there are no papers; see: pitchboard choices " + file);
        }
        return JobCommand.code(outcome);
    }

    private static String failing(Outcome.Designed designed) {
        String rules = designed.failsRules() ? ", and it FAILS rules: see its rules sheet" : "";
        return designed.carried().hasFailures() ? rules + ", and it DOES NOT CARRY: see its strength sheet" : rules;
    }
}
