package pitchboard.buying.yard;

/** What a board may be meant for. */
public enum Use {
    STRINGERS("stringers"),
    TREADS("treads"),
    RISERS("riser boards"),
    HEAD("head board"),
    FOOT("foot board"),
    POSTS("posts"),
    RAILS("rails"),
    INFILL("infill"),
    HANDRAIL("handrail");

    private final String words;

    Use(String words) {
        this.words = words;
    }

    /** As a price list writes it. */
    public String words() {
        return words;
    }
}
