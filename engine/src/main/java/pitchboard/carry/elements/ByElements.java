package pitchboard.carry.elements;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Phrase;
import pitchboard.strength.Elastic;
import pitchboard.strength.elements.Peak;
import pitchboard.strength.elements.Plate;
import pitchboard.strength.elements.PlateAnswer;
import pitchboard.strength.elements.Support;
import pitchboard.strength.elements.throat.AgainstThroat;
import pitchboard.strength.elements.throat.SlopedBeam;

/**
 * What the finite elements say of one stringer, beside the throat under the same load on the same supports.
 *
 * @param wood whose constants were used
 * @param solved under the load that is held against strength
 * @param sagPart that part of this load of which the sag is judged
 * @param slenderness span along the slope over the throat; the longer span where a post stands under it
 * @param beam the throat as a plain beam
 * @param instant the answers that were there at once, under the load that is held against strength
 */
public record ByElements(
        Elastic wood,
        Plate plate,
        PlateAnswer.Solved solved,
        double sagPart,
        double slenderness,
        SlopedBeam beam,
        AgainstThroat throat,
        Instant instant) {
    /** Under the load of which the sag is judged, in mm, plumb. */
    public double sagMm() {
        return solved.fallMm().value() * sagPart;
    }

    /** Its sag over that of the throat, bending alone. */
    public double sagShare() {
        return 1 / throat.inertiaRatio();
    }

    /** Its sag over that of the compact rule, where the rule reaches. */
    public Optional<Double> sagOfRule() {
        return instant.ruleMm().match(mm -> Optional.of(solved.fallMm().value() / mm), because -> Optional.empty());
    }

    /** Whether it runs on over a post between foot and head. */
    public boolean overPost() {
        return plate.supports().size() > 2;
    }

    /** Bending stress of the throat as a plain beam, in N/mm²: above zero where its lower edge is stretched. */
    public double bendingMpaAt(double x) {
        Support foot = plate.supports().get(0);
        double moment = beam.moment(x - foot.from().toward(foot.to(), 0.5).x());
        return moment / (beam.thicknessMm() * beam.depthMm() * beam.depthMm() / 6);
    }

    public Peak tension() {
        return solved.peak(Peak.Kind.TENSION_ALONG);
    }

    /** Whether it is long enough for its throat to be compared with a beam. */
    public boolean isBeam() {
        return Expected.isBeam(slenderness);
    }

    /** In what it disagrees with throat and rule beyond what is expected; empty when it does not. */
    public List<Phrase> disagreements() {
        return Expected.broken(this);
    }
}
