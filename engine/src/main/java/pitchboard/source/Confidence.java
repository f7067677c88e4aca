package pitchboard.source;

/** How a published value reached this program. Shown wherever the value is shown, unless it was read. */
public enum Confidence {
    /** Read in a public copy of this very edition. */
    READ(""),
    /** Read in a public copy of another edition or an adopting text; that it also stands here is from memory. */
    READ_ELSEWHERE("read in another edition, check before relying on it"),
    /** Written from memory. */
    FROM_MEMORY("from memory, check before relying on it"),
    /** What the trade does; no document says so. */
    COMMON_PRACTICE("common practice, no source"),
    /** Follows from geometry or arithmetic alone. */
    DERIVED("");

    private final String caution;

    Confidence(String caution) {
        this.caution = caution;
    }

    /** The words printed beside the value; empty when none are needed. */
    public String caution() {
        return caution;
    }
}
