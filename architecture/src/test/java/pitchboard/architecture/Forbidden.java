package pitchboard.architecture;

import java.util.List;

/**
 * What the engine may not touch, although it lies in packages that it may use.
 *
 * <p>The engine's Java is also compiled for the browser, where some calls are missing and some answer differently; and
 * the same job must give the same bytes everywhere, on every run. A name is a type, a type with a member (all its
 * overloads, also through heirs of the type), or a member with parameter types (that overload alone).
 */
record Forbidden(String name, String because) {
    /** The JDK packages the engine may use at all. */
    static final List<String> PACKAGES =
            List.of("java.lang", "java.util", "java.util.function", "java.util.stream", "java.util.regex", "java.math");

    /** The members of {@code Class} that need no reflection; all others are forbidden. */
    static final List<String> HARMLESS_ON_CLASS = List.of("cast", "isInstance", "desiredAssertionStatus");

    static final List<Forbidden> ENGINE = listed("""
            java.lang.System                          | clock, environment and console are outside the engine
            java.lang.Runtime                         | asks the machine
            java.lang.Process                         | asks the machine
            java.lang.ProcessBuilder                  | asks the machine
            java.lang.Thread                          | no threads in the engine
            java.lang.ThreadLocal                     | no threads in the engine
            java.lang.Module                          | reflection
            java.lang.ClassLoader                     | reflection
            java.lang.StackWalker                     | reflection
            java.lang.Float                           | float is not rounded step by step in the browser
            java.lang.StrictMath                      | answers other than Math and than the browser
            java.lang.StringBuffer                    | is locked for threads; StringBuilder is not
            java.lang.Number.floatValue               | float is not rounded step by step in the browser
            java.lang.Object.wait                     | no threads in the engine
            java.lang.Object.notify                   | no threads in the engine
            java.lang.Object.notifyAll                | no threads in the engine
            java.lang.Throwable.printStackTrace       | the console is outside the engine
            java.lang.Throwable.getStackTrace         | reflection
            java.lang.Boolean.getBoolean              | reads the environment
            java.lang.Integer.getInteger              | reads the environment
            java.lang.Long.getLong                    | reads the environment
            java.lang.Character.toString(int)         | missing in the browser; appendCodePoint is there
            java.lang.String.format                   | rounds differently in the browser
            java.lang.String.formatted                | rounds differently in the browser
            java.lang.String.lines                    | missing in the browser
            java.lang.String.indent                   | missing in the browser
            java.lang.String.transform                | missing in the browser
            java.lang.String.toLowerCase              | depends on the machine's language
            java.lang.String.toUpperCase              | depends on the machine's language
            java.lang.String.getBytes                 | depends on the machine's character set
            java.lang.Math.round                      | halves below zero go the other way in the browser
            java.lang.Math.rint                       | halves go the other way in the browser
            java.lang.Math.fma                        | missing in the browser
            java.lang.Math.random                     | no chance in the engine
            java.lang.Math.ulp                        | inexact in the browser
            java.lang.Math.IEEEremainder              | inexact in the browser
            java.lang.Math.log10                      | inexact in the browser
            java.lang.Math.log1p                      | inexact in the browser
            java.lang.Math.expm1                      | inexact in the browser
            java.math.BigDecimal.sqrt                 | missing in the browser; BigInteger.sqrt is there
            java.util.Random                          | no chance in the engine
            java.util.SplittableRandom                | no chance in the engine
            java.util.UUID                            | no chance in the engine
            java.util.Collections.shuffle             | no chance in the engine
            java.util.Locale                          | the reader's language is chosen outside the engine
            java.util.ResourceBundle                  | the reader's language is chosen outside the engine
            java.util.Currency                        | the reader's language is chosen outside the engine
            java.util.Formatter                       | rounds differently in the browser
            java.util.Scanner                         | missing in the browser
            java.util.StringJoiner                    | missing in the browser; String.join is there
            java.util.HexFormat                       | missing in the browser
            java.util.ServiceLoader                   | reflection
            java.util.Properties                      | belongs to files
            java.util.Timer                           | clock and threads
            java.util.TimerTask                       | clock and threads
            java.util.Date                            | clock
            java.util.Calendar                        | clock
            java.util.TimeZone                        | clock
            java.util.regex.Matcher.results           | missing in the browser
            java.util.regex.Matcher.replaceAll(java.util.function.Function)   | missing in the browser
            java.util.regex.Matcher.replaceFirst(java.util.function.Function) | missing in the browser
            java.util.Collection.parallelStream       | no threads in the engine
            java.util.stream.BaseStream.parallel      | no threads in the engine
            java.util.Set.of                          | its order changes from run to run; LinkedHashSet, EnumSet, List keep one
            java.util.Set.copyOf                      | its order changes from run to run; LinkedHashSet, EnumSet, List keep one
            java.util.Map.of                          | its order changes from run to run; LinkedHashMap, EnumMap, TreeMap keep one
            java.util.Map.ofEntries                   | its order changes from run to run; LinkedHashMap, EnumMap, TreeMap keep one
            java.util.Map.copyOf                      | its order changes from run to run; LinkedHashMap, EnumMap, TreeMap keep one
            java.util.stream.Collectors.toUnmodifiableSet | its order changes from run to run
            java.util.stream.Collectors.toUnmodifiableMap | its order changes from run to run
            """);

    private static List<Forbidden> listed(String table) {
        return table.lines()
                .map(line -> line.split(" *\\| *"))
                .map(cells -> new Forbidden(cells[0], cells[1]))
                .toList();
    }

    boolean isWholeType() {
        return Character.isUpperCase(lastPart().charAt(0)) && !lastPart().equals("IEEEremainder");
    }

    /** The type the name speaks of: the name itself, or what stands before the member. */
    String type() {
        return isWholeType()
                ? name
                : withoutParameters().substring(0, withoutParameters().lastIndexOf('.'));
    }

    String member() {
        return lastPart();
    }

    /** The parameter types asked for, one text; empty when every overload is meant. */
    String parameters() {
        return name.contains("(") ? name.substring(name.indexOf('(') + 1, name.length() - 1) : "";
    }

    private String withoutParameters() {
        return name.contains("(") ? name.substring(0, name.indexOf('(')) : name;
    }

    private String lastPart() {
        return withoutParameters().substring(withoutParameters().lastIndexOf('.') + 1);
    }

    /** The list as a page shows it. */
    static String asMarkdown() {
        StringBuilder page = new StringBuilder("| Not in the engine | Because |\n|---|---|\n");
        ENGINE.forEach(each -> page.append("| `%s` | %s |\n".formatted(each.name(), each.because())));
        return page.toString();
    }
}
