package planted.plane;

import planted.parts.Downward;

/** Reaches for a package above it. */
public record Upward(Downward part) {}
