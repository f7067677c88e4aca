package pitchboard.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import java.util.Optional;
import pitchboard.web.api.JobRoutes;
import pitchboard.web.api.LiveRoutes;
import pitchboard.web.api.PaperRoutes;
import pitchboard.web.api.Shelf;
import pitchboard.web.api.TickRoutes;
import pitchboard.web.api.VersionRoutes;
import pitchboard.web.files.FileRoutes;
import pitchboard.web.files.PageFiles;
import pitchboard.web.guarding.Allowance;
import pitchboard.web.guarding.Door;
import pitchboard.web.jobs.Jobs;
import pitchboard.web.live.Live;

/** The server, put together from its parts. */
public final class Server implements AutoCloseable {
    private final Javalin javalin;
    private final Live live;

    private Server(Javalin javalin, Live live) {
        this.javalin = javalin;
        this.live = live;
    }

    /**
     * Starts a server.
     *
     * @param port 0 for any that is free
     */
    public static Server start(int port, Jobs jobs) {
        Live live = new Live();
        Shelf shelf = new Shelf(jobs, live);
        Door door = new Door(
                new Allowance(10_000, 5_000, System::nanoTime),
                new Allowance(300, 60, System::nanoTime),
                key -> Optional.empty());
        Javalin javalin = Javalin.create(config -> {
            quiet(config);
            config.jetty.host = "127.0.0.1";
            config.jetty.port = port;
            routes(config.routes, door, shelf);
        });
        return new Server(javalin.start(), live);
    }

    private static void quiet(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
    }

    private static void routes(RoutesConfig routes, Door door, Shelf shelf) {
        routes.before(door::check);
        new FileRoutes(new PageFiles()).add(routes);
        new JobRoutes(shelf).add(routes);
        new VersionRoutes(shelf).add(routes);
        new TickRoutes(shelf).add(routes);
        new PaperRoutes(shelf).add(routes);
        new LiveRoutes(shelf).add(routes);
        Faults.add(routes);
    }

    public int port() {
        return javalin.port();
    }

    public String address() {
        return "http://127.0.0.1:" + port() + "/";
    }

    @Override
    public void close() {
        live.close();
        javalin.stop();
    }
}
