package planted.measure;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.stream.Stream;

/** Every method breaks one rule, by the name of the method. */
@SuppressWarnings("all")
public final class Touching {
    public long clock() {
        return System.nanoTime();
    }

    public String format(double x) {
        return String.format("%.1f", x);
    }

    public String formatted(double x) {
        return "%.1f".formatted(x);
    }

    public Function<String, Stream<String>> reference() {
        return String::lines;
    }

    public long rounding(double x) {
        return Math.round(x);
    }

    public int chance(Random random) {
        return random.nextInt();
    }

    public Path file() {
        return Path.of("x");
    }

    public String language(Locale locale) {
        return locale.getLanguage();
    }

    public String caseOfTheMachine(String text) {
        return text.toLowerCase();
    }

    public long heir(List<String> list) {
        return list.parallelStream().count();
    }

    public String overload(int codePoint) {
        return Character.toString(codePoint);
    }

    public String overloadWithFunction(Matcher matcher, Function<MatchResult, String> each) {
        return matcher.replaceAll(each);
    }

    public Map<String, String> order(Map<String, String> map) {
        return Map.copyOf(map);
    }

    public String reflection(Object any) {
        return any.getClass().getName();
    }

    public void thread(Runnable work) {
        new Thread(work).start();
    }

    public double narrow(double x) {
        return (float) x;
    }

    public double literal() {
        return 1.5f;
    }

    public double locked(double x) {
        synchronized (this) {
            return x;
        }
    }
}
