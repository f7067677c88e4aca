package pitchboard.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program's entry. */
@Command(
        name = "pitchboard",
        description = "From tape measurements to the papers a crew builds a timber stair from.",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        subcommands = {
            StartCommand.class,
            ChoicesCommand.class,
            ShowCommand.class,
            CompareCommand.class,
            PapersCommand.class,
            BuyCommand.class,
            QuoteCommand.class,
            OptionsCommand.class,
            AfterwardsCommand.class,
            OpenCommand.class,
            RulebooksCommand.class
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  pitchboard start my-stair.yaml",
            "  pitchboard choices my-stair.yaml",
            "  pitchboard papers my-stair.yaml --to papers",
            "  pitchboard open",
            "",
            "Exit codes: 0 done; 1 done, but the stair fails a rule or none fits; 2 not understood;",
            "3 could not read or write; 70 a fault of the program itself.",
            "",
            "The local code as adopted decides. Where the work can hurt someone, ask a licensed",
            "professional."
        })
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec;

    public static void main(String[] arguments) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, arguments));
    }

    /** Runs one command and returns its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        int code = new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setParameterExceptionHandler((trouble, args) -> notUnderstood(trouble))
                .setExecutionExceptionHandler((trouble, line, parsed) -> Troubles.tell(trouble, line.getErr()))
                .execute(arguments);
        out.flush();
        err.flush();
        return code;
    }

    private static int notUnderstood(ParameterException trouble) {
        CommandLine line = trouble.getCommandLine();
        line.getErr().println(trouble.getMessage());
        line.getErr().println("See: " + line.getCommandName() + " --help");
        return ExitCode.NOT_UNDERSTOOD;
    }

    /** Without a command there is nothing to do but say what there is. */
    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"pitchboard " + Main.class.getPackage().getImplementationVersion()};
        }
    }
}
