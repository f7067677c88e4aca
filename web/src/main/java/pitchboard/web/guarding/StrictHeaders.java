package pitchboard.web.guarding;

import java.util.LinkedHashMap;
import java.util.Map;

/** What every answer tells the browser: take scripts, styles and data from here alone, and let nobody frame this. */
public final class StrictHeaders {
    /** For everything but the engine: no inline script or style, nothing from elsewhere. */
    public static final String PAGE_POLICY = "default-src 'none'; script-src 'self'; style-src 'self';"
            + " img-src 'self' data: blob:; font-src 'self' data:; connect-src 'self'; worker-src 'self';"
            + " manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    /** Because the glue around WebAssembly is made at run time; it runs in a worker, which sees no page. */
    public static final String ENGINE_POLICY =
            "default-src 'none'; script-src 'self' 'unsafe-eval'; connect-src 'self'";

    private StrictHeaders() {}

    /** The headers of an answer to a request for this path. */
    public static Map<String, String> of(String path) {
        boolean engine = path.equals("/page/engine-worker.js") || path.startsWith("/engine/");
        Map<String, String> headers = new LinkedHashMap<>();
        headers.put("Content-Security-Policy", engine ? ENGINE_POLICY : PAGE_POLICY);
        headers.put("X-Content-Type-Options", "nosniff");
        headers.put("Referrer-Policy", "no-referrer");
        headers.put("Cross-Origin-Opener-Policy", "same-origin");
        headers.put("Cross-Origin-Resource-Policy", "same-origin");
        headers.put("X-Frame-Options", "DENY");
        headers.put("Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=()");
        headers.put("Cache-Control", "no-store");
        return headers;
    }
}
