package pitchboard.costing;

/** What a line of cost is for; taxes differ by it. */
public enum LineKind {
    LUMBER("lumber"),
    SUNDRIES("sundries"),
    LABOUR("labour"),
    EXTRAS("extras");

    private final String words;

    LineKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
