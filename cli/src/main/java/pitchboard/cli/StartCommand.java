package pitchboard.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pitchboard.app.FirstJob;
import pitchboard.store.FileTrouble;

/** A first job file. */
@Command(
        name = "start",
        description = "Makes a job file with a comment on every line, to be filled in with your own measurements.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExample:%n",
        footer = "  pitchboard start my-stair.yaml")
final class StartCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the job file to make; one that is there already is left alone")
    private Path file;

    @Override
    public Integer call() throws FileTrouble {
        FirstJob.make(file);
        new Desk(spec.commandLine().getOut(), spec.commandLine().getErr())
                .say("made " + file + ". Put your own measurements in, then: pitchboard choices " + file);
        return ExitCode.DONE;
    }
}
