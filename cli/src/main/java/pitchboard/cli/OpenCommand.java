package pitchboard.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The page is a program of its own, which the launcher starts; here it only stands in the list. */
@Command(
        name = "open",
        description = "Opens the page in the browser: every job, worked out while you type. It runs on this computer"
                + " alone until you share it.")
final class OpenCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        new Desk(spec.commandLine().getOut(), spec.commandLine().getErr())
                .say("the page is a program of its own; start it with: ./pitchboard open");
        return ExitCode.NOT_UNDERSTOOD;
    }
}
