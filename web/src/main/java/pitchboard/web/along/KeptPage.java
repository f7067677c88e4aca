package pitchboard.web.along;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pitchboard.documents.json.Json;
import pitchboard.web.files.PageFile;
import pitchboard.web.files.PageFiles;

/** The page as the browser keeps it, to be opened without the server. */
public final class KeptPage {
    private static final String WORKER = "/page/page-worker.js";
    private static final String TYPE = "text/javascript; charset=utf-8";

    private KeptPage() {}

    /** The script that keeps it, with two lines above it: what all the files are, and a word for their state. */
    public static PageFile worker(PageFiles files) {
        List<String> paths = List.copyOf(paths(files));
        String version = PageFile.of(
                        TYPE,
                        paths.stream()
                                .map(path -> path + " " + files.get(path).tag())
                                .collect(Collectors.joining("\n"))
                                .getBytes(StandardCharsets.UTF_8))
                .tag();
        String list = Json.list(paths, path -> Json.words(path.equals(AlongPage.INDEX) ? "/" : path))
                .text();
        String script = "const VERSION = " + Json.words(version).text() + ";\nconst FILES = " + list + ";\n"
                + files.get(WORKER).text();
        return PageFile.of(TYPE, script.getBytes(StandardCharsets.UTF_8));
    }

    /** Every file that the page can need. */
    static Set<String> paths(PageFiles files) {
        Template template = new Template(files.get(AlongPage.INDEX).text());
        Set<String> paths = new LinkedHashSet<>(List.of(AlongPage.INDEX));
        for (String kind : List.of("manifest", "icon", "stylesheet")) {
            paths.addAll(template.links(kind));
        }
        template.links("stylesheet").forEach(sheet -> paths.addAll(Styles.needs(files::find, sheet)));
        paths.addAll(Modules.from(path -> files.find(path).map(PageFile::text), template.entry())
                .texts()
                .keySet());
        paths.addAll(AlongPage.PARTS);
        return paths;
    }
}
