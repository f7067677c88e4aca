package pitchboard.store.library;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import pitchboard.store.FileTrouble;
import pitchboard.store.Notation;

/** What the tests of the library share. */
final class Crew {
    static final By PHONE = new By("Phone in the van", "");
    static final Instant MORNING = Instant.parse("2027-05-14T06:30:00.250Z");

    private Crew() {}

    /** Each time it is looked at, a second has gone by. */
    static Clock clock() {
        return new Clock() {
            private Instant next = MORNING;

            @Override
            public synchronized Instant instant() {
                Instant now = next;
                next = next.plus(Duration.ofSeconds(1));
                return now;
            }

            @Override
            public ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(ZoneId zone) {
                return this;
            }
        };
    }

    static JobLibrary library(Path folder) throws FileTrouble {
        return JobLibrary.open(folder.resolve("jobs.db"), clock());
    }

    static Draft draft(String yaml) {
        return Draft.of(new Wording(Notation.YAML, yaml), Optional.empty());
    }

    static Draft named(String name, String place) {
        return new Draft(new Wording(Notation.YAML, "job: any\n"), Optional.empty(), name, place);
    }

    static Search all() {
        return new Search("", Search.Shelf.AT_HAND, Integer.MAX_VALUE);
    }
}
