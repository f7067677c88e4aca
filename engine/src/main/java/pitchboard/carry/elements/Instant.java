package pitchboard.carry.elements;

import pitchboard.strength.Answer;
import pitchboard.strength.elements.throat.CompactRule;
import pitchboard.strength.elements.throat.SawTooth;
import pitchboard.strength.elements.throat.SlopedBeam;

/**
 * The answer that is there at once.
 *
 * @param throatMm how far the throat sags as a plain beam on the same supports, from bending alone
 * @param ruleMm how far the board sags by the compact rule; or why the rule does not reach
 */
public record Instant(double throatMm, Answer<Double> ruleMm) {
    static Instant of(SawTooth board, SlopedBeam throat) {
        Answer<Double> rule = CompactRule.beam(board, throat)
                .map(beam -> Answer.known(beam.fallMm()))
                .orElseGet(() -> Answer.unknown(String.join("; ", CompactRule.outside(board))));
        return new Instant(throat.fallFromBendingMm(), rule);
    }

    /** Elements sag up to two fifths more than such a rule would have it, so that it says nothing there. */
    static Instant overPost(SlopedBeam throat) {
        return new Instant(
                throat.fallFromBendingMm(), Answer.unknown("the rule was found on boards without a post under them"));
    }

    /** The rule's sag over the throat's. */
    public Answer<Double> share() {
        return ruleMm.map(mm -> mm / throatMm);
    }
}
