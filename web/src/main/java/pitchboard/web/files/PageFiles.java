package pitchboard.web.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import pitchboard.documents.svg.PictureWriter;
import pitchboard.documents.svg.SvgWriter;

/** Finds the files of the page: those of this program, the engine, the type and the library that draws. */
public final class PageFiles {
    private static final Pattern NAME =
            Pattern.compile("[a-z0-9][A-Za-z0-9-]*([./][a-z0-9][A-Za-z0-9-]*)*\\.[a-z0-9]+");
    private static final Pattern FONT = Pattern.compile("[A-Za-z]+-[A-Za-z]+\\.(ttf|txt)");

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png",
            "webmanifest", "application/manifest+json",
            "json", "application/json; charset=utf-8",
            "wasm", "application/wasm",
            "ttf", "font/ttf",
            "txt", "text/plain; charset=utf-8");

    /** Where what is asked for lies; the first that fits. */
    private static final List<Place> PLACES = List.of(
            new Place("/page/lib/", "/META-INF/resources/webjars/lit-html/3.3.1/", NAME),
            new Place("/page/fonts/", "/fonts/", FONT),
            new Place("/page/", "/pitchboard/web/page/", NAME),
            new Place("/engine/", "/web/engine/", NAME));

    /** The pens of all drawings, as the writers of drawings have them. */
    private static final String PENS = "/page/look/pens.css";

    private final Map<String, Optional<PageFile>> known = new ConcurrentHashMap<>(Map.of(PENS, Optional.of(pens())));

    private static PageFile pens() {
        return PageFile.of(TYPES.get("css"), (SvgWriter.STYLE + PictureWriter.STYLE).getBytes(StandardCharsets.UTF_8));
    }

    private record Place(String path, String resources, Pattern names) {
        Optional<String> findResource(String asked) {
            return Optional.of(asked)
                    .filter(whole -> whole.startsWith(path))
                    .map(whole -> whole.substring(path.length()))
                    .filter(name -> names.matcher(name).matches())
                    .map(name -> resources + name);
        }
    }

    /**
     * The file that a path of the page names; empty when it names none.
     *
     * @param path such as {@code /page/app.js}
     */
    public Optional<PageFile> find(String path) {
        Optional<PageFile> before = known.getOrDefault(path, Optional.empty());
        if (before.isPresent()) {
            return before;
        }
        Optional<PageFile> found = PLACES.stream()
                .filter(place -> path.startsWith(place.path()))
                .findFirst()
                .flatMap(place -> place.findResource(path))
                .flatMap(PageFiles::read);
        found.ifPresent(file -> known.put(path, found));
        return found;
    }

    /** The same, of a file that belongs to the program. */
    public PageFile get(String path) {
        return find(path).orElseThrow(() -> new IllegalStateException(path + " is missing from the program"));
    }

    private static Optional<PageFile> read(String resource) {
        Optional<String> type = Optional.ofNullable(TYPES.get(resource.substring(resource.lastIndexOf('.') + 1)));
        try (InputStream in = PageFiles.class.getResourceAsStream(resource)) {
            return in == null || type.isEmpty()
                    ? Optional.empty()
                    : Optional.of(PageFile.of(type.get(), in.readAllBytes()));
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own " + resource + " cannot be read", broken);
        }
    }
}
