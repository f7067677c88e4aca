package pitchboard.architecture;

import static com.tngtech.archunit.lang.SimpleConditionEvent.violated;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import java.util.List;
import java.util.Optional;

/** The rules that follow from a {@link House}. */
final class HouseRules {
    private HouseRules() {}

    /** Something let through against the table. Both ends are classes, so that a stale exemption does not compile. */
    record Exemption(Class<?> user, Class<?> used, String reason) {}

    static ArchRule packagesUseOnlyWhatTheTableAllows(House house, List<Exemption> exemptions) {
        return classes().should(new ArchCondition<>("use only what the table allows") {
            @Override
            public void check(JavaClass user, ConditionEvents events) {
                Optional<House.Row> row = house.findRow(user.getPackageName());
                if (row.isEmpty()) {
                    events.add(violated(user, user.getName() + " is in a package that the table does not name"));
                    return;
                }
                user.getDirectDependenciesFromSelf().stream()
                        .filter(dependency -> !isAllowed(house, row.get(), dependency))
                        .filter(dependency -> !isExempt(exemptions, dependency))
                        .forEach(dependency -> events.add(violated(user, dependency.getDescription())));
            }
        });
    }

    static ArchRule packagesAreFreeOfCycles(House house) {
        return slices().matching(house.root() + ".(**)").should().beFreeOfCycles();
    }

    private static boolean isAllowed(House house, House.Row user, Dependency dependency) {
        String used = dependency.getTargetClass().getBaseComponentType().getPackageName();
        return !house.isOwn(used)
                || house.findRow(used).filter(row -> house.allows(user, row)).isPresent();
    }

    private static boolean isExempt(List<Exemption> exemptions, Dependency dependency) {
        return exemptions.stream()
                .anyMatch(exemption -> dependency.getOriginClass().isEquivalentTo(exemption.user())
                        && dependency.getTargetClass().isEquivalentTo(exemption.used()));
    }
}
