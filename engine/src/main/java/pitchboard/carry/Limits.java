package pitchboard.carry;

import pitchboard.source.Confidence;
import pitchboard.source.Practice;
import pitchboard.source.Source;
import pitchboard.strength.eurocode.Eurocode;

/** How far a member may sag, and the sizes somebody published. */
final class Limits {
    /**
     * A part of the span.
     *
     * @param part such as 360 for a 360th
     */
    record Sag(int part, Source source) {}

    /** No table of a code has a row for stairs; the one for floors is usual. */
    static final Sag STRINGER_SAG = new Sag(360, new Practice("as floors, IRC R301.7", Confidence.READ));

    static final Sag TREAD_SAG = new Sag(288, Basis.DECK_GUIDE.read("tread sizes"));

    static final Sag SAG_AT_ONCE = new Sag(300, Eurocode.TIMBER.memory("Table 7.2"));

    static final Sag FINAL_SAG = new Sag(250, Eurocode.TIMBER.memory("Table 7.2"));

    /** {@code psi2} of rooms and stairs in dwellings (EN 1990, Table A1.1, from memory). */
    static final double LASTING = 0.3;

    private Limits() {}
}
