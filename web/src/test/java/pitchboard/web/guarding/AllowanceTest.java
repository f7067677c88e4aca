package pitchboard.web.guarding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

final class AllowanceTest {
    private final AtomicLong now = new AtomicLong();

    private static int taken(Allowance allowance, String client) {
        int taken = 0;
        while (taken < 1_000 && allowance.take(client)) {
            taken++;
        }
        return taken;
    }

    @Test
    void it_fills_up_again_with_time_but_never_beyond_its_measure() {
        Allowance allowance = new Allowance(10, 4, now::get);
        assertThat(taken(allowance, "a")).isEqualTo(10);
        now.addAndGet(1_500_000_000L);
        assertThat(taken(allowance, "a")).isEqualTo(6);
        now.addAndGet(3_600_000_000_000L);
        assertThat(taken(allowance, "a")).isEqualTo(10);
    }

    @Test
    void each_client_has_its_own() {
        Allowance allowance = new Allowance(3, 1, now::get);
        assertThat(taken(allowance, "a")).isEqualTo(3);
        assertThat(taken(allowance, "b")).isEqualTo(3);
    }
}
