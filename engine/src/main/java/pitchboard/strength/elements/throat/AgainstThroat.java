package pitchboard.strength.elements.throat;

import pitchboard.strength.elements.Peak;
import pitchboard.strength.elements.PlateAnswer;

/**
 * The finite elements beside the usual reckoning, which takes what is left under the notches as a plain beam.
 *
 * @param inertiaRatio effective second moment of area over that of the throat: the throat's fall from bending over the
 *     finite elements' fall
 * @param equivalentDepthMm depth of the plain beam, bending alone, that sinks as much
 * @param stressRatio largest tension along the grain over the throat's bending stress
 */
public record AgainstThroat(double inertiaRatio, double equivalentDepthMm, double stressRatio) {
    /** @param throat a beam with the depth of the throat, the same span and the same loads */
    public static AgainstThroat of(PlateAnswer.Solved elements, SlopedBeam throat) {
        double ratio = throat.fallFromBendingMm() / elements.fallMm().value();
        double stress = elements.peak(Peak.Kind.TENSION_ALONG).mpa().value() / throat.bendingMpa();
        return new AgainstThroat(ratio, throat.depthMm() * Math.cbrt(ratio), stress);
    }
}
