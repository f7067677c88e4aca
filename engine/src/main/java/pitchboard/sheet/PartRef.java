package pitchboard.sheet;

/** Which part of the stair put a mark on the paper. */
public record PartRef(String id) {
    /** Marks that belong to the sheet itself: frames, tables, rulers. */
    public static final PartRef NONE = new PartRef("");

    public static PartRef of(String id) {
        return new PartRef(id);
    }

    public boolean isNone() {
        return id.isEmpty();
    }
}
