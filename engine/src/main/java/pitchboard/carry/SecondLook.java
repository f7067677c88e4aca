package pitchboard.carry;

import pitchboard.carry.elements.ByElements;
import pitchboard.carry.elements.SecondOpinion;
import pitchboard.rules.Rulebook;
import pitchboard.stair.Stair;
import pitchboard.strength.Answer;
import pitchboard.strength.Units;

/**
 * The stringers by finite elements, for those who ask: it takes some tenths of a second, so that no page waits for it.
 *
 * @param units in which loads and stresses are shown
 */
public record SecondLook(MemberFinding finding, Answer<ByElements> elements, Units units) {
    /** Takes it, under the loads of a rulebook or those the job states. */
    public static SecondLook at(Stair stair, Rulebook book) {
        Answer<SecondOpinion> opinion = SecondOpinion.on(stair, book);
        Answer<ByElements> elements = opinion.then(SecondOpinion::elements);
        Units units = opinion.match(asked -> asked.basis().units(), because -> Units.POUNDS);
        return new SecondLook(SecondFindings.of(elements), elements, units);
    }
}
