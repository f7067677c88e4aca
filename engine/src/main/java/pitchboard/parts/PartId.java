package pitchboard.parts;

/** The short mark pencilled on a piece, such as {@code S}. Drawings, lists and findings point to pieces by it. */
public record PartId(String mark) {
    public static final PartId STRINGER = new PartId("S");
    public static final PartId PITCH_BOARD = new PartId("P");
    public static final PartId TREAD = new PartId("T");
    public static final PartId RISER = new PartId("R");
    public static final PartId BOTTOM_RISER = new PartId("RB");
    public static final PartId TOP_RISER = new PartId("RT");
    public static final PartId BACK_STRIP = new PartId("RS");
    public static final PartId HEAD_BOARD = new PartId("H");
    public static final PartId FOOT_BOARD = new PartId("F");
    public static final PartId SUPPORT = new PartId("SP");
    public static final PartId POST = new PartId("GP");
    public static final PartId TOP_RAIL = new PartId("GT");
    public static final PartId BOTTOM_RAIL = new PartId("GB");
    public static final PartId INFILL = new PartId("GI");
    public static final PartId EDGE_POST = new PartId("LP");
    public static final PartId EDGE_TOP_RAIL = new PartId("LT");
    public static final PartId EDGE_BOTTOM_RAIL = new PartId("LB");
    public static final PartId EDGE_INFILL = new PartId("LI");
    public static final PartId HANDRAIL = new PartId("HR");

    /** One of several lengths of the same kind, counted from 1: {@code GP2}. */
    public PartId numbered(int number) {
        return new PartId(mark + number);
    }
}
