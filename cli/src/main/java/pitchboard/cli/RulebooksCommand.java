package pitchboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TrueText;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;
import pitchboard.rules.kinds.guards.OneRail;

/** Which rulebooks a job file can name. */
@Command(
        name = "rulebooks",
        description = "Lists the rulebooks a job file can name, and which stairs each is about.",
        mixinStandardHelpOptions = true)
final class RulebooksCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(
            names = "--one-rail",
            paramLabel = "<rulebook>",
            description =
                    "Says instead how high one rail may be that is handrail and top of the guard at once under this"
                            + " rulebook; given again, under all of them together.")
    private List<String> together = new ArrayList<>();

    @Override
    public Integer call() {
        Desk desk = new Desk(spec.commandLine().getOut(), spec.commandLine().getErr());
        if (!together.isEmpty()) {
            return oneRail(desk);
        }
        for (Rulebook book : Books.all()) {
            desk.print(book.name() + "\n    " + book.scope() + "\n");
        }
        return ExitCode.DONE;
    }

    private int oneRail(Desk desk) {
        Optional<List<Rulebook>> books = NamedBooks.find(together, desk);
        if (books.isEmpty()) {
            return ExitCode.NOT_UNDERSTOOD;
        }
        OneRail rail = OneRail.under(books.get());
        desk.print("one rail as handrail and top of the guard: " + words(rail) + "\n");
        return rail.mustBeTwo() ? ExitCode.FAILING : ExitCode.DONE;
    }

    private static String words(OneRail rail) {
        String limits = Stream.of(
                        rail.least().map(least -> size(least) + " at least"),
                        rail.most().map(most -> size(most) + " at most"))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return limits.isEmpty() ? "no limit" : limits + (rail.mustBeTwo() ? ": not possible, fit two" : "");
    }

    private static String size(Length height) {
        return TrueText.write(height, Tape.SIXTEENTHS, Tape.Style.PLAIN) + " ("
                + TrueText.write(height, Tape.MILLIMETRES, Tape.Style.PLAIN) + ")";
    }
}
