package pitchboard.web.api;

import io.javalin.config.RoutesConfig;

/** What others save, as it happens. */
public final class LiveRoutes {
    private final Shelf shelf;

    public LiveRoutes(Shelf shelf) {
        this.shelf = shelf;
    }

    public void add(RoutesConfig routes) {
        routes.sse("/api/live", shelf.live()::listen);
    }
}
