package pitchboard.strength.timber;

import pitchboard.source.Source;
import pitchboard.strength.Elastic;
import pitchboard.strength.Stress;

/**
 * Elastic constants of one wood as shares of its modulus along the grain.
 *
 * @param of the wood, in words
 * @param tangentialShare modulus across the grain and along the rings
 * @param tangentialShear shear modulus of the plane along the grain and the rings
 * @param tangentialPoisson how much it narrows along the rings for a stretch along the grain
 * @param radialShare modulus across the grain and the rings; so with the next two
 */
public record ElasticRatios(
        String of,
        double tangentialShare,
        double tangentialShear,
        double tangentialPoisson,
        double radialShare,
        double radialShear,
        double radialPoisson,
        Source source) {
    /** Of a board whose rings run along its wide face, as those of most wide boards do. */
    public Elastic tangential(Stress along) {
        return new Elastic(
                along, along.times(tangentialShare), along.times(tangentialShear), tangentialPoisson, of, source);
    }

    /** Of a board whose rings stand on its wide face. */
    public Elastic radial(Stress along) {
        return new Elastic(along, along.times(radialShare), along.times(radialShear), radialPoisson, of, source);
    }
}
