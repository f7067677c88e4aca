package pitchboard.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;

/** Says in a carpenter's words what a YAML library has against a text. */
final class YamlTrouble {
    /** What the library says, and what is nearly always meant. */
    private static final Map<String, String> WORDS = words();

    private YamlTrouble() {}

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("mapping values are not allowed here", "one colon on a line (words that hold a colon go in quotes)");
        words.put("could not find expected ':'", "a name with a colon after it");
        words.put("expected <block end>", "all lines of a group to begin in the same column");
        words.put("found unexpected end of stream", "a quote to close the one that was opened");
        words.put("found unexpected document separator", "a quote to close the one that was opened");
        words.put("expected ',' or '}'", "a comma, or } to close the group");
        words.put("expected ',' or ']'", "a comma, or ] to close the list");
        words.put("that cannot start any token", "words in quotes when they begin with a sign such as @ or %");
        words.put("found unknown escape character", "single quotes around words that hold a backslash");
        words.put("expected escape sequence", "single quotes around words that hold a backslash");
        words.put("expected the node content, but found", "a value");
        return words;
    }

    static Problem problem(String yaml, YamlEngineException refusal) {
        if (refusal instanceof ReaderException unprintable) {
            return unprintable(yaml, unprintable);
        }
        if (refusal instanceof MarkedYamlEngineException marked) {
            return marked(yaml, marked);
        }
        return new Problem(Spot.NOWHERE, "", "", "text that YAML can read (" + refusal.getMessage() + ")");
    }

    private static Problem marked(String yaml, MarkedYamlEngineException refusal) {
        Optional<Mark> mark = refusal.getProblemMark().or(refusal::getContextMark);
        Spot at = mark.map(YamlReader::spot).orElse(Spot.NOWHERE);
        List<String> lines = yaml.lines().toList();
        String line = at.line() > 0 && at.line() <= lines.size() ? lines.get(at.line() - 1) : "";
        int tab = line.indexOf('\t');
        if (tab >= 0 && line.substring(0, tab).isBlank()) {
            return new Problem(
                    new Spot(at.line(), tab + 1),
                    "",
                    "a tab",
                    "blanks: a tab is as wide as each screen likes it to be");
        }
        return new Problem(at, "", line.strip(), expected(refusal.getProblem()));
    }

    private static String expected(String problem) {
        return WORDS.entrySet().stream()
                .filter(entry -> problem.contains(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("text that YAML can read (" + problem + ")");
    }

    private static Problem unprintable(String yaml, ReaderException refusal) {
        int at = yaml.offsetByCodePoints(0, Math.min(refusal.getPosition(), yaml.codePointCount(0, yaml.length())));
        String before = yaml.substring(0, at);
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        int column = at - before.lastIndexOf('\n');
        String code = Integer.toHexString(refusal.getCodePoint());
        return new Problem(new Spot(line, column), "", "", "letters and signs, not the control character U+" + code);
    }
}
