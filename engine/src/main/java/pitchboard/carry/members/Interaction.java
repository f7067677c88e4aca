package pitchboard.carry.members;

import pitchboard.strength.Answer;
import pitchboard.strength.Stress;

/** How bending and what acts along the grain are added up; the sum is 1 at most. */
interface Interaction {
    /** With a pressure along the grain. */
    Answer<Double> pressed(Stress pressure, Stress bend);

    /** With a pull along the grain. */
    double pulled(Stress pull, Stress bend);
}
