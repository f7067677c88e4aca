package pitchboard.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.SimpleConditionEvent.violated;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import java.util.Optional;
import java.util.stream.Collectors;

/** The engine touches nothing outside itself, and calls nothing that the browser answers differently. */
final class PurityRules {
    private PurityRules() {}

    static ArchRule theEngineIsPure(House house) {
        return classes()
                .that(describe("are of the engine", each -> house.isEngine(each.getPackageName())))
                .should(new ArchCondition<>("be pure") {
                    @Override
                    public void check(JavaClass user, ConditionEvents events) {
                        user.getDirectDependenciesFromSelf()
                                .forEach(dependency -> reasonAgainst(house, dependency)
                                        .ifPresent(reason -> events.add(
                                                violated(user, dependency.getDescription() + ": " + reason))));
                        user.getAccessesFromSelf()
                                .forEach(access -> reasonAgainst(access)
                                        .ifPresent(reason ->
                                                events.add(violated(user, access.getDescription() + ": " + reason))));
                    }
                });
    }

    private static Optional<String> reasonAgainst(House house, Dependency dependency) {
        JavaClass used = dependency.getTargetClass().getBaseComponentType();
        if (used.isPrimitive() || house.isOwn(used.getPackageName())) {
            return Optional.empty();
        }
        if (!Forbidden.PACKAGES.contains(used.getPackageName())) {
            return Optional.of(used.getPackageName() + " is not a package the engine may use");
        }
        return Forbidden.ENGINE.stream()
                .filter(Forbidden::isWholeType)
                .filter(forbidden -> used.isAssignableTo(forbidden.type()))
                .map(Forbidden::because)
                .findFirst();
    }

    private static Optional<String> reasonAgainst(JavaAccess<?> access) {
        String member = access.getTarget().getName();
        if (access.getTargetOwner().isEquivalentTo(Class.class) && !Forbidden.HARMLESS_ON_CLASS.contains(member)) {
            return Optional.of("reflection");
        }
        return Forbidden.ENGINE.stream()
                .filter(forbidden -> !forbidden.isWholeType())
                .filter(forbidden -> forbidden.member().equals(member))
                .filter(forbidden -> access.getTargetOwner().isAssignableTo(forbidden.type()))
                .filter(forbidden -> forbidden.parameters().isEmpty()
                        || forbidden.parameters().equals(parametersOf(access)))
                .map(Forbidden::because)
                .findFirst();
    }

    private static String parametersOf(JavaAccess<?> access) {
        return access.getTarget() instanceof CodeUnitAccessTarget called
                ? called.getRawParameterTypes().stream().map(HasName::getName).collect(Collectors.joining(","))
                : "";
    }
}
