package pitchboard.web.along;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;
import pitchboard.documents.json.Json;
import pitchboard.web.files.PageFile;
import pitchboard.web.files.PageFiles;

/**
 * The page as one file. What it runs is named by its hash, what it shows is part of it, and it may ask the network for
 * nothing. What the page's {@code along.js} takes out of it: the job in the element {@code along}, and each part of the
 * engine, as base64, in a script that does not run and has the part's name as {@code data-file}.
 */
public final class AlongPage {
    static final String INDEX = "/page/index.html";
    static final List<String> PARTS =
            List.of("/engine/engine.js", "/engine/engine-runtime.js", "/engine/engine.wasm", "/page/engine-worker.js");

    private final PageFiles files;
    private final Template template;
    private final String style;
    private final String importMap;
    private final String start;

    private AlongPage(PageFiles files) {
        this.files = files;
        this.template = new Template(files.get(INDEX).text());
        this.style = Styles.inline(files::find, template.links("stylesheet"));
        this.importMap = Modules.from(path -> files.find(path).map(PageFile::text), template.entry())
                .importMap();
        this.start = "import '" + Modules.name(template.entry()) + "';";
    }

    /** The page made of these files. */
    public static AlongPage of(PageFiles files) {
        return new AlongPage(files);
    }

    /** The whole file, with a job in it. */
    public String with(Json job) {
        return template.filled(head(), "<style>" + style + "</style>\n", body(job));
    }

    private String head() {
        String icon = template.links("icon").stream()
                .map(path -> "\n<link rel=\"icon\" href=\"" + DataUrl.of(files.get(path)) + "\" />")
                .collect(Collectors.joining());
        return "\n<meta http-equiv=\"Content-Security-Policy\" content=\"" + policy() + "\" />" + icon
                + "\n<script type=\"importmap\">" + importMap + "</script>";
    }

    private String body(Json job) {
        StringBuilder body = new StringBuilder();
        body.append("<script type=\"application/json\" id=\"along\">")
                .append(harmless(job.text()))
                .append("</script>\n");
        PARTS.forEach(path -> body.append(part(path)));
        return body.append("<script type=\"module\">")
                .append(start)
                .append("</script>\n")
                .toString();
    }

    private String part(String path) {
        return "<script type=\"text/plain\" data-file=\"" + path.substring(path.lastIndexOf('/') + 1) + "\">"
                + Base64.getEncoder().encodeToString(files.get(path).bytes()) + "</script>\n";
    }

    /** Inside a script nothing is escaped, so what could end it, or begin a comment, must not be there as it is. */
    private static String harmless(String json) {
        return json.replace("<", "\\u003c");
    }

    /** The engine's glue is made at run time, in its worker; that is what unsafe-eval is for. */
    private String policy() {
        return "default-src 'none'; script-src " + hash(importMap) + " " + hash(start)
                + " data: 'unsafe-eval'; style-src " + hash(style)
                + "; img-src data: blob:; font-src data:; connect-src data:; worker-src data:;"
                + " base-uri 'none'; form-action 'none'";
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
