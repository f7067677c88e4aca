package pitchboard.browser;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pitchboard.documents.json.Json;
import pitchboard.intake.revision.Difference;
import pitchboard.intake.revision.Differences;
import pitchboard.intake.written.Written;

/** Differences as JSON, one for each line that has a value: a group that came is each of its lines that came. */
final class LeafJson {
    private LeafJson() {}

    static Json of(Differences differences) {
        return Json.list(
                differences.all().stream().flatMap(each -> lines(each).stream()).toList(), line -> line);
    }

    private static List<Json> lines(Difference difference) {
        Map<String, String> before = leaves(difference.field(), difference.before());
        Map<String, String> after = leaves(difference.field(), difference.after());
        Set<String> fields = new LinkedHashSet<>(before.keySet());
        fields.addAll(after.keySet());
        return fields.stream()
                .<Json>map(field -> Json.object()
                        .says("field", field)
                        .with("before", words(before, field))
                        .with("after", words(after, field)))
                .toList();
    }

    private static Json words(Map<String, String> leaves, String field) {
        return leaves.containsKey(field) ? Json.words(leaves.get(field)) : Json.none();
    }

    private static Map<String, String> leaves(String field, Optional<Written> written) {
        Map<String, String> leaves = new LinkedHashMap<>();
        written.ifPresent(there -> collect(field, there, leaves));
        return leaves;
    }

    private static void collect(String field, Written written, Map<String, String> leaves) {
        if (written instanceof Written.Text text) {
            leaves.put(field, text.value());
        } else if (written instanceof Written.Group group) {
            group.entries().forEach(entry -> collect(below(field, entry.key()), entry.value(), leaves));
        } else if (written instanceof Written.Sequence sequence) {
            int number = 1;
            for (Written item : sequence.items()) {
                collect(below(field, Integer.toString(number++)), item, leaves);
            }
        }
    }

    private static String below(String field, String name) {
        return field.isEmpty() ? name : field + " > " + name;
    }
}
