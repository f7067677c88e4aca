package pitchboard.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Small methods and small files. Aim at a tenth of the first limit and at half of the second. */
final class SizeTest {
    private static final int METHOD_LINES = 50;
    private static final int FILE_LINES = 250;

    /** Files that are long because they are tables, each with its reason. */
    private static final Map<Class<?>, String> LONG_TABLES = Map.of();

    private static final List<Path> SOURCES = Project.MODULES.stream()
            .flatMap(module -> Project.javaFiles(Project.sources(module)).stream())
            .toList();

    @Test
    void no_method_is_longer_than_fifty_lines() {
        assertThat(Sizes.ofMethods(SOURCES))
                .filteredOn(method -> method.lines() > METHOD_LINES)
                .isEmpty();
    }

    @Test
    void no_file_is_longer_than_two_hundred_and_fifty_lines_unless_it_is_a_table() {
        List<String> tables = LONG_TABLES.keySet().stream()
                .map(table -> table.getSimpleName() + ".java")
                .toList();
        assertThat(Sizes.ofFiles(SOURCES))
                .filteredOn(file -> file.lines() > FILE_LINES)
                .extracting(Sizes.File::name)
                .containsExactlyInAnyOrderElementsOf(tables);
    }

    /** Adding one here is a decision: say why it is a table, and count it. */
    @Test
    void no_file_is_let_through() {
        assertThat(LONG_TABLES).isEmpty();
    }

    @Test
    void a_body_is_counted_from_brace_to_brace() {
        Path planted = Project.ROOT.resolve("architecture/src/test/java/planted/measure/Touching.java");
        assertThat(Sizes.ofMethods(List.of(planted)))
                .contains(new Sizes.Method("Touching.java", "clock", 3))
                .contains(new Sizes.Method("Touching.java", "locked", 5));
    }
}
