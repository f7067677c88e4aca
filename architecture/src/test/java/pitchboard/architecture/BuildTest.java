package pitchboard.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the build promises beyond compiling. */
final class BuildTest {
    /** The libraries each module may see, by the beginning of their package names; the engine may see none. */
    private static final Map<String, List<String>> LIBRARIES = Map.of(
            "documents", List.of("org.apache.pdfbox.", "org.apache.fontbox."),
            "store", List.of("org.snakeyaml.engine.", "org.sqlite."),
            "cli", List.of("picocli."),
            "browser", List.of("org.teavm.jso."),
            "web", List.of("picocli.", "io.javalin.", "org.eclipse.jetty.", "jakarta.servlet.", "com.google.zxing."));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(House.PITCHBOARD.root());

    /** Maven hands a module also what the modules below it need, so the compiler alone would not notice. */
    @Test
    void libraries_stay_in_their_module() {
        assertThat(CLASSES).allSatisfy(user -> {
            String module = moduleOf(user);
            List<String> allowed = LIBRARIES.getOrDefault(module, List.of());
            assertThat(librariesUsedBy(user))
                    .as("libraries used by " + user.getName())
                    .allMatch(used -> allowed.stream().anyMatch(used::startsWith));
        });
    }

    private static String moduleOf(JavaClass user) {
        return House.PITCHBOARD
                .findRow(user.getPackageName())
                .map(House.Row::module)
                .orElse("none");
    }

    private static Set<String> librariesUsedBy(JavaClass user) {
        Set<String> used = new TreeSet<>();
        Stream<JavaClass> targets = user.getDirectDependenciesFromSelf().stream()
                .map(dependency -> dependency.getTargetClass().getBaseComponentType());
        targets.filter(target -> !target.isPrimitive())
                .filter(target -> !House.PITCHBOARD.isOwn(target.getPackageName()))
                .filter(target -> !target.getPackageName().startsWith("java"))
                .forEach(target -> used.add(target.getName()));
        return used;
    }
}
