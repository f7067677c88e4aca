package pitchboard.web.files;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import pitchboard.web.wire.Refusal;

/** Hands out the files of the page. */
public final class FileRoutes {
    private static final int NOT_CHANGED = 304;

    private final PageFiles files;
    private final Supplier<PageFile> worker;

    /**
     * The routes.
     *
     * @param worker the script that keeps the page on the device; it stands above all that it keeps
     */
    public FileRoutes(PageFiles files, Supplier<PageFile> worker) {
        this.files = files;
        this.worker = worker;
    }

    public void add(RoutesConfig routes) {
        routes.get("/", context -> send(context, "/page/index.html"));
        routes.get("/page/<file>", context -> send(context, context.path()));
        routes.get("/engine/<file>", context -> send(context, context.path()));
        routes.get("/page-worker.js", context -> send(context, worker.get()));
    }

    private void send(Context context, String path) throws Refusal {
        send(context, files.find(path).orElseThrow(() -> Refusal.missing("file")));
    }

    private static void send(Context context, PageFile file) {
        boolean zip = file.zipped().isPresent() && takesGzip(context);
        String tag = "\"" + file.tag() + (zip ? "-gz" : "") + "\"";
        // Asked for again each time, and sent again only when it is another: a new version shows at once.
        context.header("Cache-Control", "no-cache").header("ETag", tag).header("Vary", "Accept-Encoding");
        if (tag.equals(context.header("If-None-Match"))) {
            context.status(NOT_CHANGED);
            return;
        }
        if (zip) {
            context.header("Content-Encoding", "gzip");
        }
        context.disableCompression()
                .contentType(file.type())
                .result(zip ? file.zipped().orElseThrow() : file.bytes());
    }

    private static boolean takesGzip(Context context) {
        String accepted = Optional.ofNullable(context.header("Accept-Encoding")).orElse("");
        return Arrays.stream(accepted.toLowerCase(Locale.ROOT).split(","))
                .map(String::strip)
                .anyMatch(each -> each.matches("gzip(;q=(1(\\.0*)?|0?\\.\\d*[1-9]\\d*))?"));
    }
}
