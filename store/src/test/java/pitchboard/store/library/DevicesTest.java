package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.store.FileTrouble;

final class DevicesTest {
    private static final Instant NOON = Instant.parse("2027-05-14T12:00:00Z");

    @TempDir
    Path folder;

    @Test
    void a_device_is_let_in_until_it_is_revoked() throws FileTrouble {
        try (JobLibrary library = at(NOON)) {
            Device phone = library.devices().add("Phone in the van", "5f1e");
            Device tablet = library.devices().add("Phone in the van", "77aa");
            assertThat(phone).isEqualTo(new Device(phone.id(), "Phone in the van", NOON, NOON, Optional.empty()));
            assertThat(library.devices().findLetIn("5f1e")).contains(phone);
            assertThat(library.devices().findLetIn("5F1E")).isEmpty();
            assertThat(library.devices().revoke(phone.id())).isTrue();
            assertThat(library.devices().revoke(phone.id())).isFalse();
            assertThat(library.devices().revoke("nosuchone0")).isFalse();
            assertThat(library.devices().findLetIn("5f1e")).isEmpty();
            assertThat(library.devices().list())
                    .containsExactly(new Device(phone.id(), "Phone in the van", NOON, NOON, Optional.of(NOON)), tablet);
        }
    }

    @Test
    void when_it_came_is_noted_once_a_minute() throws FileTrouble {
        String id;
        try (JobLibrary library = at(NOON)) {
            id = library.devices().add("Phone", "5f1e").id();
        }
        for (int seconds : new int[] {1, 60, 61, 100, 121, 122, 0}) {
            try (JobLibrary library = at(NOON.plusSeconds(seconds))) {
                library.devices().touch(id);
                library.devices().touch("nosuchone0");
            }
            try (JobLibrary library = at(NOON)) {
                int noted = seconds < 61 && seconds > 0 ? 0 : seconds == 0 || seconds > 121 ? 122 : 61;
                assertThat(library.devices().list())
                        .as("%d s", seconds)
                        .extracting(Device::seen)
                        .containsExactly(NOON.plusSeconds(noted));
            }
        }
    }

    @Test
    void two_devices_never_share_a_token() throws FileTrouble {
        try (JobLibrary library = at(NOON)) {
            Device first = library.devices().add("a", "5f1e");
            assertThatThrownBy(() -> library.devices().add("b", "5f1e")).isInstanceOf(FileTrouble.class);
            assertThat(library.devices().list()).containsExactly(first);
        }
    }

    private JobLibrary at(Instant time) throws FileTrouble {
        return JobLibrary.open(folder.resolve("jobs.db"), Clock.fixed(time, ZoneOffset.UTC));
    }
}
