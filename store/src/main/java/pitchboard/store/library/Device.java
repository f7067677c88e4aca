package pitchboard.store.library;

import java.time.Instant;
import java.util.Optional;

/**
 * A phone or computer that was let in.
 *
 * @param seen when it last came, to the minute or so
 * @param revoked since when it is no longer let in; empty while it is
 */
public record Device(String id, String name, Instant paired, Instant seen, Optional<Instant> revoked) {}
