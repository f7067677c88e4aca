package pitchboard.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The list of what the engine may not touch names real things: a slip of the pen would forbid nothing. */
final class ForbiddenTest {
    static Stream<Forbidden> everyForbiddenName() {
        return Forbidden.ENGINE.stream();
    }

    @ParameterizedTest
    @MethodSource("everyForbiddenName")
    void it_exists(Forbidden forbidden) throws ClassNotFoundException {
        Class<?> type = Class.forName(forbidden.type());
        assertThat(Forbidden.PACKAGES).contains(type.getPackageName());
        if (!forbidden.isWholeType()) {
            assertThat(type.getMethods())
                    .anyMatch(method -> method.getName().equals(forbidden.member())
                            && (forbidden.parameters().isEmpty()
                                    || forbidden.parameters().equals(parametersOf(method))));
        }
    }

    @ParameterizedTest
    @MethodSource("everyForbiddenName")
    void it_says_why(Forbidden forbidden) {
        assertThat(forbidden.because()).isNotBlank();
    }

    private static String parametersOf(Method method) {
        return Arrays.stream(method.getParameterTypes()).map(Class::getName).collect(Collectors.joining(","));
    }
}
