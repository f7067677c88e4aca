package pitchboard.carry.joints;

import pitchboard.source.Confidence;
import pitchboard.source.Practice;
import pitchboard.source.Source;
import pitchboard.strength.AreaLoad;

/** What the ground is presumed to carry by its kind. */
public enum Soil {
    CLAY_OR_SILT(1500),
    SAND_OR_SILTY_GRAVEL(2000),
    GRAVEL(3000),
    SEDIMENTARY_ROCK(4000),
    CRYSTALLINE_ROCK(12_000);

    public static final Source SOURCE = new Practice("IRC Table R401.4.1, IBC Table 1806.2", Confidence.READ);

    private final double psf;

    Soil(double psf) {
        this.psf = psf;
    }

    public AreaLoad bearing() {
        return AreaLoad.psf(psf);
    }
}
