package pitchboard.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What compiled classes do not show; {@link PlantedViolationsTest} proves that it is found. */
final class EngineSourcesTest {
    @Test
    void the_engine_has_no_float_and_no_lock() {
        assertThat(EngineSources.reports(Project.sources("engine"))).isEmpty();
    }
}
