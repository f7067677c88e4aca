package pitchboard.strength.timber;

/**
 * Design values of visually graded dimension lumber, 2 to 4 inches thick (NDS 2018 Supplement, Tables 4A and 4B).
 * Southern pine is published for one width at a time, so its values hold for that width only.
 */
public final class Supplement2018 {
    private static final String TABLE_4A = """
            Douglas Fir-Larch | 180 | 625 | 0.5
                Select Structural | 1500 | 1000 | 1700 | 1900000 | 690000
                No.1 & Btr | 1200 | 800 | 1550 | 1800000 | 660000
                No.1 | 1000 | 675 | 1500 | 1700000 | 620000
                No.2 | 900 | 575 | 1350 | 1600000 | 580000
                No.3 | 525 | 325 | 775 | 1400000 | 510000
                Stud | 700 | 450 | 850 | 1400000 | 510000
            Douglas Fir-Larch (North) | 180 | 625 | 0.49
                Select Structural | 1350 | 825 | 1900 | 1900000 | 690000
                No.1/No.2 | 850 | 500 | 1400 | 1600000 | 580000
                No.3 | 475 | 300 | 825 | 1400000 | 510000
            Douglas Fir-South | 180 | 520 | 0.46
                Select Structural | 1350 | 900 | 1600 | 1400000 | 510000
                No.1 | 925 | 600 | 1450 | 1300000 | 470000
                No.2 | 850 | 525 | 1350 | 1200000 | 440000
                No.3 | 500 | 300 | 775 | 1100000 | 400000
            Hem-Fir | 150 | 405 | 0.43
                Select Structural | 1400 | 925 | 1500 | 1600000 | 580000
                No.1 & Btr | 1100 | 725 | 1350 | 1500000 | 550000
                No.1 | 975 | 625 | 1350 | 1500000 | 550000
                No.2 | 850 | 525 | 1300 | 1300000 | 470000
                No.3 | 500 | 300 | 725 | 1200000 | 440000
                Stud | 675 | 400 | 800 | 1200000 | 440000
            Hem-Fir (North) | 145 | 405 | 0.46
                Select Structural | 1300 | 775 | 1700 | 1700000 | 620000
                No.1/No.2 | 1000 | 575 | 1450 | 1600000 | 580000
                No.3 | 575 | 325 | 850 | 1400000 | 510000
            Spruce-Pine-Fir | 135 | 425 | 0.42
                Select Structural | 1250 | 700 | 1400 | 1500000 | 550000
                No.1/No.2 | 875 | 450 | 1150 | 1400000 | 510000
                No.3 | 500 | 250 | 650 | 1200000 | 440000
                Stud | 675 | 350 | 725 | 1200000 | 440000
            Spruce-Pine-Fir (South) | 135 | 335 | 0.36
                Select Structural | 1300 | 575 | 1200 | 1300000 | 470000
                No.1 | 875 | 400 | 1050 | 1200000 | 440000
                No.2 | 775 | 350 | 1000 | 1100000 | 400000
                No.3 | 450 | 200 | 575 | 1000000 | 370000
            Redwood | 160 | 425 | 0.37
                Select Structural | 1100 | 625 | 1100 | 1100000 | 400000
                No.1 | 775 | 450 | 900 | 1100000 | 400000
                No.2 | 725 | 425 | 700 | 1000000 | 370000
            Western Cedars | 155 | 425 | 0.36
                Select Structural | 1000 | 600 | 1000 | 1100000 | 400000
                No.1 | 725 | 425 | 825 | 1000000 | 370000
                No.2 | 700 | 425 | 650 | 1000000 | 370000
                No.3 | 400 | 250 | 375 | 900000 | 330000
            Northern Species | 110 | 350 | 0.35
                Select Structural | 975 | 425 | 1100 | 1100000 | 400000
                No.1/No.2 | 625 | 275 | 850 | 1100000 | 400000
                No.3 | 350 | 150 | 500 | 1000000 | 370000
            Western Woods | 135 | 335 | 0.36
                Select Structural | 900 | 400 | 1050 | 1200000 | 440000
                No.1 | 675 | 300 | 950 | 1100000 | 400000
                No.2 | 675 | 300 | 900 | 1000000 | 370000
                No.3 | 375 | 175 | 525 | 900000 | 330000
            """;

    /** From memory; each agrees with rounded metric values that were read, and Fb and E with published span tables. */
    private static final String TABLE_4B = """
            Southern Pine | 175 | 565 | 0.55
                Select Structural | 2x4 | 2350 | 1650 | 1900 | 1800000 | 660000
                Select Structural | 2x6 | 2100 | 1450 | 1800 | 1800000 | 660000
                Select Structural | 2x8 | 1950 | 1350 | 1700 | 1800000 | 660000
                Select Structural | 2x10 | 1700 | 1150 | 1650 | 1800000 | 660000
                Select Structural | 2x12 | 1600 | 1100 | 1650 | 1800000 | 660000
                No.1 | 2x4 | 1500 | 1000 | 1650 | 1600000 | 580000
                No.1 | 2x6 | 1350 | 875 | 1550 | 1600000 | 580000
                No.1 | 2x8 | 1250 | 800 | 1500 | 1600000 | 580000
                No.1 | 2x10 | 1050 | 700 | 1450 | 1600000 | 580000
                No.1 | 2x12 | 1000 | 650 | 1400 | 1600000 | 580000
                No.2 | 2x4 | 1100 | 675 | 1450 | 1400000 | 510000
                No.2 | 2x6 | 1000 | 600 | 1400 | 1400000 | 510000
                No.2 | 2x8 | 925 | 550 | 1350 | 1400000 | 510000
                No.2 | 2x10 | 800 | 475 | 1300 | 1400000 | 510000
                No.2 | 2x12 | 750 | 450 | 1250 | 1400000 | 510000
                No.3 | 2x4 | 650 | 400 | 850 | 1300000 | 470000
                No.3 | 2x6 | 575 | 350 | 800 | 1300000 | 470000
                No.3 | 2x8 | 525 | 325 | 775 | 1300000 | 470000
                No.3 | 2x10 | 475 | 275 | 750 | 1300000 | 470000
                No.3 | 2x12 | 450 | 250 | 725 | 1300000 | 470000
            """;

    private static final ValueTable TABLE = ValueTable.read(TABLE_4A, Nds.SUPPLEMENT.read("Table 4A"))
            .and(ValueTable.read(TABLE_4B, Nds.SUPPLEMENT.memory("Table 4B")));

    private Supplement2018() {}

    public static ValueTable table() {
        return TABLE;
    }
}
