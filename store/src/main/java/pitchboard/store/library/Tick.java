package pitchboard.store.library;

import java.time.Instant;

/**
 * Something that was checked off on site.
 *
 * @param name what the page calls it, such as {@code mark 3}
 */
public record Tick(String name, Instant made) {}
