package pitchboard.web;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import pitchboard.store.FileTrouble;

/** The program's entry for the page. */
@Command(
        name = "pitchboard open",
        description = "Opens the page in the browser: every job, worked out while you type. It runs on this computer"
                + " alone until you share it.",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class)
public final class Main implements Callable<Integer> {
    private static final int NOT_UNDERSTOOD = 2;
    private static final int NO_ACCESS = 3;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "4680",
            description = "the port (${DEFAULT-VALUE}); when it is taken, the next that is free")
    private int port;

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "where the jobs are kept; when left out, where this system keeps such things")
    private Path data;

    @Option(names = "--share", description = "lets phones and computers on this network in, once they are paired")
    private boolean share;

    @Option(names = "--no-browser", description = "opens no browser")
    private boolean noBrowser;

    @Option(names = "--trial", hidden = true, description = "starts, answers once and stops")
    private boolean trial;

    public static void main(String[] arguments) {
        // What the libraries say is of use only when it is a warning.
        Logger.getLogger("").setLevel(Level.WARNING);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, arguments));
    }

    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return new CommandLine(new Main())
                .setOut(out)
                .setErr(err)
                .setParameterExceptionHandler((trouble, args) -> notUnderstood(trouble))
                .setExecutionExceptionHandler((trouble, line, parsed) -> noAccess(line, trouble))
                .execute(arguments);
    }

    private static int notUnderstood(ParameterException trouble) {
        CommandLine line = trouble.getCommandLine();
        line.getErr().println(trouble.getMessage());
        line.getErr().println("See: ./pitchboard open --help");
        return NOT_UNDERSTOOD;
    }

    private static int noAccess(CommandLine line, Exception trouble) throws Exception {
        if (trouble instanceof FileTrouble) {
            line.getErr().println(trouble.getMessage());
            return NO_ACCESS;
        }
        throw trouble;
    }

    @Override
    public Integer call() throws FileTrouble, IOException, InterruptedException {
        Settings settings = settings();
        Server server = Server.start(settings);
        Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
        if (trial) {
            Trial.ask(server);
            return 0;
        }
        Greeting.say(spec.commandLine().getOut(), server, settings);
        if (!noBrowser) {
            Browsing.open(server.address());
        }
        new CountDownLatch(1).await();
        return 0;
    }

    private Settings settings() {
        if (port < 1 || port > Ports.LAST) {
            throw new ParameterException(spec.commandLine(), "--port: expected a number from 1 to " + Ports.LAST);
        }
        int free = trial ? 0 : Ports.firstFree(port, share);
        Settings alone = Settings.of(free, data == null ? DataFolder.usual() : data);
        return share ? alone.shared() : alone;
    }

    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"pitchboard " + Main.class.getPackage().getImplementationVersion()};
        }
    }
}
