package pitchboard.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import pitchboard.store.FileTrouble;
import pitchboard.web.wire.Refusal;

/** Turns whatever stopped a request into an answer: the only place that does. */
final class Faults {
    private static final Logger LOG = System.getLogger("pitchboard");
    private static final int MISSING = 404;
    private static final int FAULT = 500;
    private static final int BUSY = 503;
    private static final int NO_ROOM = 507;

    private Faults() {}

    static void add(RoutesConfig routes) {
        routes.exception(Refusal.class, Refusal::answer);
        routes.exception(FileTrouble.class, (trouble, context) -> {
            LOG.log(Level.WARNING, trouble.getMessage());
            new Refusal(status(trouble), trouble.getMessage()).answer(context);
        });
        routes.exception(
                HttpResponseException.class,
                (trouble, context) -> new Refusal(trouble.getStatus(), words(trouble.getStatus())).answer(context));
        routes.exception(Exception.class, (trouble, context) -> fault(context, trouble));
    }

    private static int status(FileTrouble trouble) {
        return switch (trouble.kind()) {
            case NO_ROOM, NO_PERMISSION -> NO_ROOM;
            case BUSY -> BUSY;
            case NOT_UNDERSTOOD, OTHER -> FAULT;
        };
    }

    /** What stands behind a fault is for the console, not for whoever asked. */
    private static void fault(Context context, Exception trouble) {
        LOG.log(Level.ERROR, "a fault of the program", trouble);
        new Refusal(FAULT, "a fault of the program; the console says more").answer(context);
    }

    private static String words(int status) {
        return status == MISSING ? "there is nothing here" : "this request cannot be answered (" + status + ")";
    }
}
