package pitchboard.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import java.util.concurrent.atomic.AtomicInteger;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.JobLibrary;
import pitchboard.web.along.KeptPage;
import pitchboard.web.api.AlongRoutes;
import pitchboard.web.api.BackupRoutes;
import pitchboard.web.api.Demo;
import pitchboard.web.api.JobRoutes;
import pitchboard.web.api.LiveRoutes;
import pitchboard.web.api.NetworkRoutes;
import pitchboard.web.api.PaperRoutes;
import pitchboard.web.api.PriceRoutes;
import pitchboard.web.api.PriceShelf;
import pitchboard.web.api.Shelf;
import pitchboard.web.api.TickRoutes;
import pitchboard.web.api.VersionRoutes;
import pitchboard.web.files.FileRoutes;
import pitchboard.web.files.PageFiles;
import pitchboard.web.guarding.Door;
import pitchboard.web.live.Live;
import pitchboard.web.network.PairedDevices;
import pitchboard.web.network.PairingCode;
import pitchboard.web.network.Sharing;

/** The server, put together from its parts. */
public final class Server implements AutoCloseable {
    private static final String LOOPBACK = "127.0.0.1";

    private final Javalin javalin;
    private final Live live;
    private final JobLibrary library;
    private final Sharing sharing;

    private Server(Settings settings, JobLibrary library) {
        AtomicInteger port = new AtomicInteger();
        this.library = library;
        this.live = new Live();
        this.sharing = new Sharing(settings.isShared(), port::get);
        this.javalin = Javalin.create(config -> {
            quiet(config);
            Refusals.add(config.jetty);
            config.jetty.host = settings.isShared() ? null : LOOPBACK;
            config.jetty.port = settings.port();
            routes(config.routes, settings);
        });
        javalin.start();
        port.set(javalin.port());
    }

    /**
     * Opens the library, with an example in it when it is new, and starts to answer.
     *
     * @throws FileTrouble when the folder of the data cannot be used
     */
    public static Server start(Settings settings) throws FileTrouble {
        AtomicWrite.folder(settings.data());
        JobLibrary library = JobLibrary.open(settings.library(), settings.clock());
        try {
            Demo.putIntoEmpty(library);
            return new Server(settings, library);
        } catch (FileTrouble | RuntimeException trouble) {
            library.close();
            throw trouble;
        }
    }

    private static void quiet(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
    }

    private void routes(RoutesConfig routes, Settings settings) {
        PairedDevices devices = new PairedDevices(library.devices());
        PageFiles files = new PageFiles();
        Shelf shelf = new Shelf(library, live, settings.limits().jobs());
        routes.before(new Door(settings.here(), settings.network(), devices)::check);
        new FileRoutes(files, () -> KeptPage.worker(files)).add(routes);
        new JobRoutes(shelf).add(routes);
        new VersionRoutes(shelf).add(routes);
        new TickRoutes(shelf).add(routes);
        new PaperRoutes(shelf).add(routes);
        new PriceRoutes(shelf, new PriceShelf(settings.prices())).add(routes);
        new AlongRoutes(shelf, files).add(routes);
        new LiveRoutes(shelf).add(routes);
        new BackupRoutes(shelf, settings.backups(), settings.clock()).add(routes);
        new NetworkRoutes(sharing, new PairingCode(settings.clock()), devices, live).add(routes);
        Faults.add(routes);
    }

    public int port() {
        return javalin.port();
    }

    public String address() {
        return "http://" + LOOPBACK + ":" + port() + "/";
    }

    /** How far it can be reached. */
    public Sharing sharing() {
        return sharing;
    }

    @Override
    public void close() {
        live.close();
        javalin.stop();
        library.close();
    }
}
