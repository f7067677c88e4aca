package pitchboard.sheet.drafting;

/** What a cut surface is made of, as its hatching tells. */
public enum Material {
    /** Timber cut across the grain: close slanting lines. */
    TIMBER_ACROSS,
    /** Timber cut along the grain: a few long lines with the grain. */
    TIMBER_ALONG,
    /** Concrete: scattered dots and small triangles. */
    CONCRETE,
    /** Ground: slanting lines in groups of three. */
    GROUND
}
