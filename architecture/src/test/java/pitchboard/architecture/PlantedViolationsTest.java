package pitchboard.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.architecture.HouseRules.Exemption;

/** The rules find what they are meant to find: packages that break them on purpose, and one that does not. */
final class PlantedViolationsTest {
    private static final House HOUSE = House.of("planted", """
            engine | measure | nothing
            engine | site    | measure
            engine | plane   | measure
            engine | parts   | measure, plane
            """);

    private static final JavaClasses CLASSES = new ClassFileImporter().importPackages("planted");

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            clock                | System
            format               | String.format
            formatted            | String.formatted
            reference            | String.lines
            rounding             | Math.round
            chance               | Random
            file                 | java.nio.file
            language             | Locale
            caseOfTheMachine     | toLowerCase
            heir                 | parallelStream
            overload             | Character.toString(int)
            overloadWithFunction | replaceAll
            order                | Map.copyOf
            reflection           | Class.getName
            thread               | Thread
            """)
    void impurity_is_found(String method, String named) {
        assertThat(reports(PurityRules.theEngineIsPure(HOUSE)))
                .anySatisfy(report ->
                        assertThat(report).contains("Touching." + method + "(").contains(named));
    }

    @Test
    void purity_is_left_alone() {
        assertThat(reports(PurityRules.theEngineIsPure(HOUSE))).noneMatch(report -> report.contains("planted.site"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"narrow", "literal", "locked"})
    void what_only_the_source_shows_is_found(String method) {
        assertThat(EngineSources.reports(Project.ROOT.resolve("architecture/src/test/java/planted/measure")))
                .anySatisfy(report -> assertThat(report).startsWith("Touching.java: " + method));
    }

    @Test
    void nothing_is_found_in_a_source_without_it() {
        assertThat(EngineSources.reports(Project.ROOT.resolve("architecture/src/test/java/planted/site")))
                .isEmpty();
    }

    @Test
    void a_use_that_the_table_does_not_name_is_found() {
        assertThat(reports(HouseRules.packagesUseOnlyWhatTheTableAllows(HOUSE, List.of())))
                .anySatisfy(report ->
                        assertThat(report).contains("planted.plane.Upward").contains("planted.parts.Downward"))
                .noneMatch(report -> report.startsWith("Method <planted.parts."));
    }

    @Test
    void a_package_that_the_table_does_not_name_is_found() {
        assertThat(reports(HouseRules.packagesUseOnlyWhatTheTableAllows(HOUSE, List.of())))
                .contains("planted.stranger.Unlisted is in a package that the table does not name");
    }

    @Test
    void an_exemption_lets_through_its_own_pair_of_classes_and_no_other() {
        Exemption exemption =
                new Exemption(planted.plane.Upward.class, planted.parts.Downward.class, "to prove that it works");
        assertThat(reports(HouseRules.packagesUseOnlyWhatTheTableAllows(HOUSE, List.of(exemption))))
                .filteredOn(report -> !report.contains("package-info"))
                .containsExactly("planted.stranger.Unlisted is in a package that the table does not name");
    }

    @Test
    void a_circle_of_packages_is_found() {
        assertThat(reports(HouseRules.packagesAreFreeOfCycles(HOUSE)))
                .anySatisfy(report -> assertThat(report)
                        .contains("Cycle detected")
                        .contains("parts")
                        .contains("plane"));
    }

    private static List<String> reports(ArchRule rule) {
        EvaluationResult result = rule.evaluate(CLASSES);
        return result.getFailureReport().getDetails();
    }
}
