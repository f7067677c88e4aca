package pitchboard.web.files;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import pitchboard.web.wire.Refusal;

/** Hands out the files of the page. */
public final class FileRoutes {
    private static final int NOT_CHANGED = 304;

    private final PageFiles files;

    public FileRoutes(PageFiles files) {
        this.files = files;
    }

    public void add(RoutesConfig routes) {
        routes.get("/", context -> send(context, "/page/index.html"));
        routes.get("/pair", context -> send(context, "/pair/pair.html"));
        for (String folder : new String[] {"/page/<file>", "/pair/<file>", "/engine/<file>"}) {
            routes.get(folder, context -> send(context, context.path()));
        }
    }

    private void send(Context context, String path) throws Refusal {
        PageFile file = files.find(path).orElseThrow(() -> Refusal.missing("file"));
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
