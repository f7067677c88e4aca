package pitchboard.web;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import pitchboard.web.api.Demo;
import pitchboard.web.jobs.Jobs;
import pitchboard.web.jobs.MemoryJobs;
import pitchboard.web.jobs.NotKept;

/** The program's entry for the page. */
@Command(
        name = "pitchboard open",
        description = "Opens the page: every job, worked out while you type. It runs on this computer alone until you"
                + " share it.",
        mixinStandardHelpOptions = true)
public final class Main implements Callable<Integer> {
    private static final int NO_ACCESS = 3;

    @Spec
    private CommandSpec spec;

    @Option(names = "--port", paramLabel = "N", description = "the port; the next free one when it is taken")
    private int port = Ports.USUAL;

    @Option(names = "--data", paramLabel = "FOLDER", description = "where the jobs are kept; else where programs of this system keep theirs")
    private Optional<Path> data = Optional.empty();

    @Option(names = "--share", description = "lets paired devices on this network in")
    private boolean share;

    @Option(names = "--no-browser", description = "opens no browser")
    private boolean noBrowser;

    @Option(names = "--trial", hidden = true, description = "starts, answers once and stops")
    private boolean trial;

    public static void main(String[] arguments) {
        Logger.getLogger("").setLevel(Level.WARNING);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        System.exit(new CommandLine(new Main()).setOut(out).execute(arguments));
    }

    @Override
    public Integer call() throws NotKept, InterruptedException {
        PrintWriter out = spec.commandLine().getOut();
        Jobs jobs = new MemoryJobs();
        if (jobs.count() == 0) {
            jobs.createFrom(Demo.text(), Demo.draft(), "this computer", "the example");
        }
        Server server = Server.start(Ports.firstFree(port), jobs);
        Runtime.getRuntime().addShutdownHook(new Thread(server::close));
        out.println("Pitchboard is open at " + server.address());
        out.println("Jobs are kept in " + data.orElseGet(DataFolder::usual) + ". Stop it with Ctrl+C.");
        if (!noBrowser) {
            Browsing.open(server.address());
        }
        new CountDownLatch(1).await();
        return 0;
    }
}
