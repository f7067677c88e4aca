package pitchboard.web.along;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The page's HTML, and what it takes from elsewhere. It is this program's own file and known to be plain: every element
 * that is looked for stands on its own, with its attributes in double quotes.
 */
final class Template {
    private static final Pattern LINK = Pattern.compile("[ \\t]*<link\\s[^>]*>\\n?");
    private static final Pattern SCRIPT = Pattern.compile("[ \\t]*<script\\s[^>]*>\\s*</script>\\n?");

    private final String html;

    Template(String html) {
        this.html = html;
    }

    /** The paths of what its links of one kind lead to, in their order. */
    List<String> links(String kind) {
        return LINK.matcher(html)
                .results()
                .map(MatchResult::group)
                .filter(link -> attribute(link, "rel").equals(Optional.of(kind)))
                .flatMap(link -> attribute(link, "href").stream())
                .toList();
    }

    /** The path of the module that starts the page. */
    String entry() {
        Matcher script = SCRIPT.matcher(html);
        while (script.find()) {
            if (attribute(script.group(), "type").equals(Optional.of("module"))) {
                return attribute(script.group(), "src").orElseThrow();
            }
        }
        throw new IllegalStateException("the page has no module to start it");
    }

    /**
     * The page with other things in its head instead of what it takes from elsewhere.
     *
     * @param first comes before everything else in the head but the character set
     * @param last ends the head
     * @param body ends the body
     */
    String filled(String first, String last, String body) {
        String bare = SCRIPT.matcher(LINK.matcher(html).replaceAll("")).replaceAll("");
        String begun = after(bare, "<meta charset=\"utf-8\" />", first);
        return before(before(begun, "</head>", last), "</body>", body);
    }

    private static String after(String text, String mark, String more) {
        return text.substring(0, index(text, mark) + mark.length())
                + more
                + text.substring(index(text, mark) + mark.length());
    }

    private static String before(String text, String mark, String more) {
        return text.substring(0, index(text, mark)) + more + text.substring(index(text, mark));
    }

    private static int index(String text, String mark) {
        int index = text.indexOf(mark);
        if (index < 0) {
            throw new IllegalStateException("the page has no " + mark);
        }
        return index;
    }

    private static Optional<String> attribute(String element, String name) {
        Matcher matcher =
                Pattern.compile("\\s" + Pattern.quote(name) + "=\"([^\"]*)\"").matcher(element);
        return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
    }
}
