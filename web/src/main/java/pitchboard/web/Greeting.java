package pitchboard.web;

import java.io.PrintWriter;

/** What the console says when the server is ready. */
final class Greeting {
    private Greeting() {}

    static void say(PrintWriter out, Server server, Settings settings) {
        out.println("Pitchboard is open at " + server.address());
        out.println("Jobs are kept in " + settings.data().toAbsolutePath() + ". Ctrl+C stops it.");
    }
}
