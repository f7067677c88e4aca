package pitchboard.strength.timber;

/**
 * Values that were published before the present ones and that older span tables rest on. They were found again by
 * reproducing those tables; the numbers themselves are from memory.
 */
public final class EarlierValues {
    /** Behind the floor joists of the 2012 code and the rafters of the 2018 code, as far as those cells show. */
    private static final String WEST = """
            Douglas Fir-Larch | 180 | 625 | 0.50
                Select Structural | 1450 | 1000 | 1700 | 1900000 | 690000
                No.1 | 1000 | 675 | 1500 | 1700000 | 620000
                No.2 | 875 | 575 | 1350 | 1600000 | 580000
                No.3 | 500 | 325 | 775 | 1400000 | 510000
            Hem-Fir | 150 | 405 | 0.43
                Select Structural | 1400 | 925 | 1500 | 1600000 | 580000
                No.1 | 950 | 625 | 1350 | 1500000 | 550000
                No.2 | 850 | 525 | 1300 | 1300000 | 470000
                No.3 | 500 | 300 | 725 | 1200000 | 440000
            """;

    /** Before June 2013; only what carries bending is known, so no other check may be made with it. */
    private static final String SOUTHERN_PINE = """
            Southern Pine | 175 | 565 | 0.55
                No.2 | 2x6 | 1250 | 725 | 1600 | 1600000 | 580000
                No.2 | 2x8 | 1200 | 650 | 1550 | 1600000 | 580000
                No.2 | 2x10 | 1050 | 575 | 1500 | 1600000 | 580000
                No.2 | 2x12 | 975 | 550 | 1450 | 1600000 | 580000
            """;

    private static final ValueTable TABLE = ValueTable.read(WEST, Nds.EARLIER.memory("Table 4A"))
            .and(ValueTable.read(SOUTHERN_PINE, Nds.EARLIER.memory("Table 4B, before June 2013")));

    private EarlierValues() {}

    public static ValueTable table() {
        return TABLE;
    }
}
