package pitchboard.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;

/** Which rulebooks a job file can name. */
@Command(
        name = "rulebooks",
        description = "Lists the rulebooks a job file can name, and which stairs each is about.",
        mixinStandardHelpOptions = true)
final class RulebooksCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        for (Rulebook book : Books.all()) {
            desk.print(book.name() + "\n    " + book.scope() + "\n");
        }
        return ExitCode.DONE;
    }
}
