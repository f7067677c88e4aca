package planted.site;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Uses much of what an engine package may use, and nothing else: records, enums, lambdas, text, sealed types. */
public sealed interface Clean {
    record Reading(String name, BigDecimal value) implements Clean {
        public Reading {
            if (name.isBlank()) {
                throw new IllegalArgumentException("a reading has a name, not \"" + name + "\"");
            }
        }
    }

    enum Surface implements Clean {
        ROUGH,
        FINISHED {
            @Override
            double allowance() {
                return Math.sqrt(2) + Math.atan2(1, 2);
            }
        };

        double allowance() {
            return 0;
        }
    }

    Pattern NUMBER = Pattern.compile("(?<whole>\\d+)");

    static Optional<String> findWhole(String text) {
        Matcher matcher = NUMBER.matcher(text);
        return matcher.matches() ? Optional.of(matcher.group("whole")) : Optional.empty();
    }

    static Map<Surface, Integer> counted(List<Surface> surfaces) {
        Map<Surface, Integer> counts = new EnumMap<>(Surface.class);
        surfaces.forEach(surface -> counts.merge(surface, 1, Integer::sum));
        return counts;
    }

    static String joined(List<Reading> readings) {
        Map<String, Reading> byName = new LinkedHashMap<>();
        readings.forEach(reading -> byName.put(reading.name(), reading));
        return byName.values().stream().map(Reading::toString).collect(Collectors.joining(", "))
                + Character.toString('.')
                + String.join("-", byName.keySet());
    }

    static String spoken(Surface surface) {
        return switch (surface) {
            case ROUGH -> "rough";
            case FINISHED -> "finished";
        };
    }
}
