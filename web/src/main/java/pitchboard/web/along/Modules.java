package pitchboard.web.along;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pitchboard.documents.json.Json;

/**
 * The modules of the page, each under a bare name that an import map leads to: a module that is part of a file has no
 * place that a relative name could start from.
 */
final class Modules {
    /** What an import or export names, when it is a path: in ECMAScript 2020 these are all the ways to name one. */
    private static final Pattern IMPORT =
            Pattern.compile("(\\bfrom\\s*|\\bimport\\s*\\(?\\s*)([\"'])((?:\\.{1,2})?/[^\"'\\s]+\\.js)\\2");

    private final Function<String, Optional<String>> files;
    private final Map<String, String> found = new LinkedHashMap<>();

    private Modules(Function<String, Optional<String>> files) {
        this.files = files;
    }

    /**
     * A module and all that it needs.
     *
     * @param files the text of a module by its path
     * @param entry the path of the first
     */
    static Modules from(Function<String, Optional<String>> files, String entry) {
        Modules modules = new Modules(files);
        Deque<String> open = new ArrayDeque<>();
        open.add(entry);
        while (!open.isEmpty()) {
            String path = open.remove();
            if (!modules.found.containsKey(path)) {
                modules.found.put(path, modules.rewritten(path, open));
            }
        }
        return modules;
    }

    /** The bare name of the module at a path. */
    static String name(String path) {
        return "pitchboard" + path;
    }

    private String rewritten(String path, Deque<String> needed) {
        String text = files.apply(path).orElseThrow(() -> new IllegalStateException(path + " is not there"));
        return IMPORT.matcher(text).replaceAll(reference -> {
            String other = PagePath.resolve(path, reference.group(3));
            if (files.apply(other).isEmpty()) {
                throw new IllegalStateException(path + " needs " + other + ", which is not there");
            }
            needed.add(other);
            String quote = reference.group(2);
            return Matcher.quoteReplacement(reference.group(1) + quote + name(other) + quote);
        });
    }

    /** Every module with the names that it uses rewritten, by its path. */
    Map<String, String> texts() {
        return found;
    }

    /** The text of an import map (WHATWG HTML, section 8.1.5.3) that holds every module. */
    String importMap() {
        Json.Fields imports = Json.object();
        found.forEach((path, text) -> imports.says(
                name(path), DataUrl.of("text/javascript; charset=utf-8", text.getBytes(StandardCharsets.UTF_8))));
        return Json.object().with("imports", imports).text();
    }
}
