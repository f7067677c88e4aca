package pitchboard.web.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

final class PairingCodeTest {
    private Instant now = Instant.parse("2027-05-14T07:00:00Z");

    private final PairingCode code = new PairingCode(new Clock() {
        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    });

    @Test
    void nobody_is_let_in_before_there_is_a_code() {
        assertThat(code.redeem("")).isFalse();
    }

    @Test
    void it_is_good_once() {
        String text = code.renew().text();
        assertThat(code.redeem(text)).isTrue();
        assertThat(code.redeem(text)).isFalse();
    }

    @Test
    void it_is_good_for_five_minutes() {
        PairingCode.Shown shown = code.renew();
        assertThat(shown.until()).isEqualTo(Instant.parse("2027-05-14T07:05:00Z"));
        now = Instant.parse("2027-05-14T07:05:00Z");
        assertThat(code.redeem(shown.text())).isFalse();
        String fresh = code.renew().text();
        now = Instant.parse("2027-05-14T07:09:59Z");
        assertThat(code.redeem(fresh)).isTrue();
    }

    @Test
    void a_new_one_takes_the_place_of_the_old_one() {
        String old = code.renew().text();
        String fresh = code.renew().text();
        assertThat(code.redeem(old)).isFalse();
        assertThat(code.redeem(fresh)).isTrue();
    }

    @Test
    void four_mistakes_are_forgiven_and_five_are_not() {
        String first = code.renew().text();
        for (int i = 0; i < 4; i++) {
            assertThat(code.redeem("AAAAAAAA")).isFalse();
        }
        assertThat(code.redeem(first)).isTrue();
        String second = code.renew().text();
        for (int i = 0; i < 5; i++) {
            assertThat(code.redeem("AAAAAAAA")).isFalse();
        }
        assertThat(code.redeem(second)).isFalse();
    }
}
