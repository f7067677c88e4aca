package pitchboard.web.guarding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class HostCheckTest {
    @ParameterizedTest
    @CsvSource({
        "192.168.1.5:4680, 192.168.1.5, 4680, true",
        "192.168.1.6:4680, 192.168.1.5, 4680, false",
        "192.168.1.5, 192.168.1.5, 4680, false",
        "192.168.1.5, 192.168.1.5, 80, true",
        "192.168.1.5:80, 192.168.1.5, 80, true",
        "[fd00::2]:4680, fd00:0:0:0:0:0:0:2, 4680, false",
        "[fd00:0:0:0:0:0:0:2]:4680, '[fd00:0:0:0:0:0:0:2%eth0]', 4680, true",
        "boats.example:4680, 192.168.1.5, 4680, false",
    })
    void only_the_address_that_a_request_came_in_on_is_its_own(String host, String address, int port, boolean own) {
        assertThat(HostCheck.isOwn(host, address, port)).isEqualTo(own);
    }

    @Test
    void the_other_end_is_here_or_elsewhere() {
        assertThat(HostCheck.isLoopback("127.0.0.1")).isTrue();
        assertThat(HostCheck.isLoopback("[0:0:0:0:0:0:0:1]")).isTrue();
        assertThat(HostCheck.isLoopback("192.168.1.5")).isFalse();
        assertThat(HostCheck.isLoopback("[fe80::1%eth0]")).isFalse();
    }
}
