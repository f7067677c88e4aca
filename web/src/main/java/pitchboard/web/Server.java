package pitchboard.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import java.util.Optional;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.JobLibrary;
import pitchboard.web.api.BackupRoutes;
import pitchboard.web.api.Demo;
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
import pitchboard.web.live.Live;

/** The server, put together from its parts. */
public final class Server implements AutoCloseable {
    private final Javalin javalin;
    private final Live live;
    private final JobLibrary library;

    private Server(Javalin javalin, Live live, JobLibrary library) {
        this.javalin = javalin;
        this.live = live;
        this.library = library;
    }

    /**
     * Opens the library, with an example in it when it is new, and starts to answer.
     *
     * @throws FileTrouble when the folder of the data cannot be used
     */
    public static Server start(Settings settings) throws FileTrouble {
        AtomicWrite.folder(settings.data());
        JobLibrary library = JobLibrary.open(settings.library(), settings.clock());
        Demo.putIntoEmpty(library);
        Live live = new Live();
        Shelf shelf = new Shelf(library, live, settings.mostJobs());
        Door door = new Door(
                new Allowance(10_000, 5_000, System::nanoTime),
                new Allowance(300, 60, System::nanoTime),
                key -> Optional.empty());
        Javalin javalin = Javalin.create(config -> {
            quiet(config);
            config.jetty.host = "127.0.0.1";
            config.jetty.port = settings.port();
            routes(config.routes, settings, door, shelf);
        });
        return new Server(javalin.start(), live, library);
    }

    private static void quiet(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
    }

    private static void routes(RoutesConfig routes, Settings settings, Door door, Shelf shelf) {
        routes.before(door::check);
        new FileRoutes(new PageFiles()).add(routes);
        new JobRoutes(shelf).add(routes);
        new VersionRoutes(shelf).add(routes);
        new TickRoutes(shelf).add(routes);
        new PaperRoutes(shelf).add(routes);
        new LiveRoutes(shelf).add(routes);
        new BackupRoutes(shelf, settings.backups(), settings.clock()).add(routes);
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
        library.close();
    }
}
