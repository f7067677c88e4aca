package pitchboard.source;

/**
 * Not a document: plain geometry, what was measured, what was asked for, or a habit of the trade.
 *
 * @param citation the words shown as the source
 */
public record Practice(String citation, Confidence confidence) implements Source {
    public static final Practice GEOMETRY = new Practice("geometry", Confidence.DERIVED);
    public static final Practice STATICS = new Practice("statics", Confidence.DERIVED);
    public static final Practice MEASURED = new Practice("measured", Confidence.DERIVED);
    public static final Practice ASKED_FOR = new Practice("asked for", Confidence.DERIVED);
    public static final Practice CHOSEN = new Practice("chosen", Confidence.DERIVED);
    public static final Practice TRADE = new Practice("trade", Confidence.COMMON_PRACTICE);
}
