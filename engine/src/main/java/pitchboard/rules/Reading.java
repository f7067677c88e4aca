package pitchboard.rules;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Phrase;
import pitchboard.site.Certainty;
import pitchboard.site.Overhead;
import pitchboard.site.Rise;
import pitchboard.site.Site;

/** A measurement that a verdict can rest on. */
public enum Reading {
    RISE {
        @Override
        Optional<Verdict> findDoubt(Site site) {
            Fact fact = site.rise() instanceof Rise.FromLevelLine ? Fact.LEVEL_LINE : Fact.RISE;
            return doubt(Unknown.of(fact), "the rise", site.rise().certainty());
        }
    },
    RUN_AVAILABLE {
        @Override
        Optional<Verdict> findDoubt(Site site) {
            return site.runAvailable()
                    .flatMap(run -> doubt(Unknown.of(Fact.RUN_AVAILABLE), "the run available", run.certainty()));
        }
    },
    OVERHEAD {
        @Override
        Optional<Verdict> findDoubt(Site site) {
            int item = 1;
            for (Overhead overhead : site.overheads()) {
                if (!overhead.underside().isSure()) {
                    String what = "the height of " + overhead.name();
                    return doubt(
                            new Unknown(Fact.UNDERSIDE, item),
                            what,
                            overhead.underside().certainty());
                }
                item++;
            }
            return Optional.empty();
        }
    };

    /** Such as {@code measure the rise: it is only estimated}; empty when it was measured. */
    abstract Optional<Verdict> findDoubt(Site site);

    /** What to measure before a good word can be said; empty when all of them were measured. */
    public static Optional<Verdict> findDoubt(List<Reading> readings, Site site) {
        return readings.stream()
                .flatMap(reading -> reading.findDoubt(site).stream())
                .findFirst();
    }

    private static Optional<Verdict> doubt(Unknown unknown, String what, Certainty certainty) {
        return switch (certainty) {
            case MEASURED -> Optional.empty();
            case FROM_DRAWING -> doubt(unknown, "measure " + what + ": it is only read from a drawing");
            case ESTIMATED -> doubt(unknown, "measure " + what + ": it is only estimated");
        };
    }

    private static Optional<Verdict> doubt(Unknown unknown, String missing) {
        return Optional.of(new Verdict.CannotTell(Phrase.of(missing), Optional.of(unknown)));
    }
}
