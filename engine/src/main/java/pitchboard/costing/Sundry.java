package pitchboard.costing;

/** What is bought by the pack: kinds and sizes, no makes. */
public enum Sundry {
    TREAD_SCREWS("tread screws", "screws"),
    RISER_SCREWS("riser board screws", "screws"),
    POST_BOLTS("post bolts", "bolts"),
    HANGERS("stringer hangers", "hangers"),
    ADHESIVE("adhesive", "ft of bead"),
    CONCRETE("concrete", "cubic feet"),
    GRAVEL("gravel", "cubic feet"),
    FINISH("finish", "square feet of one coat");

    private final String words;
    private final String unit;

    Sundry(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    /** As a file of rates writes it. */
    public String words() {
        return words;
    }

    /** What its quantity and its packs are counted in. */
    public String unit() {
        return unit;
    }
}
