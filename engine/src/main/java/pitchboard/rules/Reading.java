package pitchboard.rules;

import java.util.List;
import java.util.Optional;
import pitchboard.site.Certainty;
import pitchboard.site.Overhead;
import pitchboard.site.Site;

/** A measurement that a verdict can rest on. */
public enum Reading {
    RISE {
        @Override
        Optional<String> findDoubt(Site site) {
            return doubt("the rise", site.rise().certainty());
        }
    },
    RUN_AVAILABLE {
        @Override
        Optional<String> findDoubt(Site site) {
            return site.runAvailable().flatMap(run -> doubt("the run available", run.certainty()));
        }
    },
    OVERHEAD {
        @Override
        Optional<String> findDoubt(Site site) {
            for (Overhead overhead : site.overheads()) {
                if (!overhead.underside().isSure()) {
                    String what = "the height of " + overhead.name();
                    return doubt(what, overhead.underside().certainty());
                }
            }
            return Optional.empty();
        }
    };

    /** Such as {@code measure the rise: it is only estimated}; empty when it was measured. */
    abstract Optional<String> findDoubt(Site site);

    /** What to measure before a good word can be said; empty when all of them were measured. */
    public static Optional<Verdict> findDoubt(List<Reading> readings, Site site) {
        for (Reading reading : readings) {
            Optional<String> doubt = reading.findDoubt(site);
            if (doubt.isPresent()) {
                return doubt.map(Verdict::cannotTell);
            }
        }
        return Optional.empty();
    }

    private static Optional<String> doubt(String what, Certainty certainty) {
        return switch (certainty) {
            case MEASURED -> Optional.empty();
            case FROM_DRAWING -> Optional.of("measure " + what + ": it is only read from a drawing");
            case ESTIMATED -> Optional.of("measure " + what + ": it is only estimated");
        };
    }
}
