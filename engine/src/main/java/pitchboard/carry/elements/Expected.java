package pitchboard.carry.elements;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Phrase;
import pitchboard.measure.Reckoned;

/**
 * How finite elements may stand to throat and compact rule before they are said to disagree.
 *
 * <p>Found by computation, not published: of 400 stairs drawn by chance, every head and foot and at least 40 mm of throat, those whose span along the
 * slope is at least 14 throats sag 0.34 to 0.97 of what the throat does and are stretched 0.81 to 0.94 of it; from 8 throats
 * on 0.85 to 1.24 and 0.82 to 0.96. Shorter ones are no beams.
 *
 * <p>Over a post, of 295 more with the post anywhere and no end that rises, by the longer span: from 14 throats on 0.35 to
 * 1.08 and 0.46 to 0.96; from 8 on 0.68 to 1.85 and 0.47 to 1.02, but for one on a foot that is nearly cut off, 1.92. The
 * plain beam is stretched most right over the post, where the elements have a corner of a step or not.
 */
final class Expected {
    private static final double SLENDER = 14;
    private static final double BEAM = 8;

    private static final Band SAG_OF_RULE = new Band(0.9, 1.1);
    private static final Band SAG_OF_SLENDER = new Band(0.3, 1);
    private static final Band SAG_OF_BEAM = new Band(0.75, 1.3);
    private static final Band TENSION = new Band(0.75, 1);

    private static final Band SAG_OF_SLENDER_OVER_POST = new Band(0.3, 1.15);
    private static final Band SAG_OF_BEAM_OVER_POST = new Band(0.6, 1.95);
    private static final Band TENSION_OVER_POST = new Band(0.4, 1.1);

    /** From one share of one to another. */
    private record Band(double least, double most) {
        Optional<Phrase> broken(String of, double share) {
            return share >= least && share <= most
                    ? Optional.empty()
                    : Optional.of(Phrase.of(
                            "{} of the " + of + ", where {} to {} is expected",
                            Reckoned.share(share),
                            Reckoned.share(least),
                            Reckoned.share(most)));
        }
    }

    private Expected() {}

    /** Whether it is long enough for its throat to be compared with a beam. */
    static boolean isBeam(double slenderness) {
        return slenderness >= BEAM;
    }

    /** Every share that is not as expected. */
    static List<Phrase> broken(ByElements it) {
        List<Phrase> broken = new ArrayList<>();
        if (!isBeam(it.slenderness())) {
            return broken;
        }
        sag(it).broken("sag of the throat", it.sagShare()).ifPresent(broken::add);
        it.sagOfRule()
                .flatMap(share -> SAG_OF_RULE.broken("sag by the compact rule", share))
                .ifPresent(broken::add);
        (it.overPost() ? TENSION_OVER_POST : TENSION)
                .broken("bending stress of the throat", it.throat().stressRatio())
                .ifPresent(broken::add);
        return broken;
    }

    private static Band sag(ByElements it) {
        boolean slender = it.slenderness() >= SLENDER;
        if (it.overPost()) {
            return slender ? SAG_OF_SLENDER_OVER_POST : SAG_OF_BEAM_OVER_POST;
        }
        return slender ? SAG_OF_SLENDER : SAG_OF_BEAM;
    }
}
