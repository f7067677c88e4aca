package pitchboard.sheet.pictures;

import pitchboard.site.Rise;
import pitchboard.site.Site;

/** Lines of the job file, as its page names them, that decide the sizes in a picture. */
final class Fields {
    static final String RISERS = "wanted > steps > number of risers";
    static final String RUN = "wanted > steps > run";
    static final String SPACE = "measured > run available";
    static final String HEADER_DEPTH = "measured > header > depth";
    static final String BOARD_DEPTH = "wanted > stringers > depth";
    static final String RAIL = "wanted > handrail > height";
    static final String GUARD = "wanted > guard > height";
    /** What no single line decides. */
    static final String NONE = "";

    private Fields() {}

    static String rise(Site site) {
        return site.rise() instanceof Rise.AtLanding ? "measured > rise" : "measured > level line";
    }

    /** The height of what is overhead, counted from 0 as in the site. */
    static String underside(int overhead) {
        return "measured > overhead > " + (overhead + 1) + " > underside";
    }
}
