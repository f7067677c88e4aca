package pitchboard.architecture;

import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.File;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pitchboard.architecture.HouseRules.Exemption;

/** The packages keep to {@link House#PITCHBOARD}, and the engine to itself. */
final class ArchitectureTest {
    private static final House HOUSE = House.PITCHBOARD;

    private static final List<Exemption> EXEMPTIONS = List.of();

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(HOUSE.root());

    @Test
    void every_package_uses_only_what_the_table_allows() {
        HouseRules.packagesUseOnlyWhatTheTableAllows(HOUSE, EXEMPTIONS).check(CLASSES);
    }

    @Test
    void packages_form_no_cycle() {
        HouseRules.packagesAreFreeOfCycles(HOUSE).check(CLASSES);
    }

    @Test
    void the_engine_touches_nothing_outside_itself() {
        PurityRules.theEngineIsPure(HOUSE).check(CLASSES);
    }

    /** Adding one here is a decision: say in the exemption why, and count it. */
    @Test
    void there_are_no_exemptions() {
        assertThat(EXEMPTIONS).isEmpty();
    }

    /** Seen from the sources, so that the other rules cannot pass because their classes were not found. */
    @Test
    void every_package_with_sources_was_looked_at_and_stands_in_the_table_for_its_module() {
        SortedSet<String> lookedAt = packagesLookedAt();
        packagesWithTypes()
                .forEach((module, packages) -> assertThat(packages)
                        .as("packages of " + module)
                        .allSatisfy(name -> {
                            assertThat(lookedAt).contains(name);
                            assertThat(HOUSE.findRow(name))
                                    .map(House.Row::module)
                                    .contains(module);
                        }));
    }

    /** The use cases are written last; from then on a row without classes is a leftover. */
    @Test
    void once_there_are_use_cases_every_row_has_classes() {
        if (!packagesWithTypes().containsKey("app")) {
            return;
        }
        Set<House.Row> rowsInUse = packagesLookedAt().stream()
                .flatMap(name -> HOUSE.findRow(name).stream())
                .collect(toSet());
        assertThat(rowsInUse).containsExactlyInAnyOrderElementsOf(HOUSE.rows());
    }

    @Test
    void the_table_reads_from_the_ground_up() {
        List<String> names = HOUSE.rows().stream().map(House.Row::name).toList();
        assertThat(HOUSE.rows())
                .allSatisfy(row -> assertThat(names.subList(0, names.indexOf(row.name())))
                        .containsAll(row.uses().stream()
                                .filter(use -> !use.equals("engine"))
                                .toList()));
    }

    /** A package that has only its description was not looked at: it has nothing to look at. */
    private static SortedSet<String> packagesLookedAt() {
        return CLASSES.stream()
                .filter(each -> !each.getSimpleName().equals("package-info"))
                .map(JavaClass::getPackageName)
                .collect(toCollection(TreeSet::new));
    }

    private static SortedMap<String, SortedSet<String>> packagesWithTypes() {
        SortedMap<String, SortedSet<String>> found = new TreeMap<>();
        for (String module : Project.MODULES) {
            Project.javaFiles(Project.sources(module)).stream()
                    .filter(file -> !file.endsWith("package-info.java"))
                    .map(file -> Project.sources(module).relativize(file.getParent()))
                    .map(folder -> folder.toString().replace(File.separatorChar, '.'))
                    .forEach(name -> found.computeIfAbsent(module, any -> new TreeSet<>())
                            .add(name));
        }
        return found;
    }
}
