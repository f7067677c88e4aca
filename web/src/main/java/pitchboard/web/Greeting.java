package pitchboard.web;

import java.io.PrintWriter;
import pitchboard.web.network.OwnAddresses;

/** What the console says when the server is ready. */
final class Greeting {
    private Greeting() {}

    static void say(PrintWriter out, Server server, Settings settings) {
        out.println("Pitchboard is open at " + server.address());
        if (settings.isShared()) {
            OwnAddresses.urls(server.port()).forEach(url -> out.println("On this network it is at " + url));
        }
        out.println(server.sharing().statement());
        out.println("Jobs are kept in " + settings.data().toAbsolutePath() + ". Ctrl+C stops it.");
    }
}
