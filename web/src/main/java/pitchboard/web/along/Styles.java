package pitchboard.web.along;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pitchboard.web.files.PageFile;

/** Style sheets as one text that holds whatever they refer to: fonts and pictures. */
final class Styles {
    private static final Pattern URL = Pattern.compile("url\\(\\s*([\"']?)([^\"')]+)\\1\\s*\\)");

    private Styles() {}

    /**
     * The sheets in their order.
     *
     * @param files a file by its path
     * @param paths of the sheets
     */
    static String inline(Function<String, Optional<PageFile>> files, List<String> paths) {
        return paths.stream().map(path -> inline(files, path)).collect(Collectors.joining("\n"));
    }

    private static String inline(Function<String, Optional<PageFile>> files, String path) {
        String text = get(files, path, path).text();
        if (text.contains("</") || text.contains("@import")) {
            throw new IllegalStateException(path + " cannot be put into a page: it has a </ or an @import in it");
        }
        return URL.matcher(text).replaceAll(reference -> {
            String url = reference.group(2);
            String held = isHere(url) ? url : DataUrl.of(get(files, PagePath.resolve(path, url), path));
            return Matcher.quoteReplacement("url(\"" + held + "\")");
        });
    }

    /** The paths of whatever a sheet refers to. */
    static List<String> needs(Function<String, Optional<PageFile>> files, String path) {
        return URL.matcher(get(files, path, path).text())
                .results()
                .map(reference -> reference.group(2))
                .filter(url -> !isHere(url))
                .map(url -> PagePath.resolve(path, url))
                .toList();
    }

    private static boolean isHere(String url) {
        return url.startsWith("data:") || url.startsWith("#");
    }

    private static PageFile get(Function<String, Optional<PageFile>> files, String path, String user) {
        return files.apply(path).orElseThrow(() -> new IllegalStateException(user + " needs " + path));
    }
}
