package pitchboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.site.Certainty;
import pitchboard.site.FootSurface;
import pitchboard.site.HeadSupport;
import pitchboard.site.Landing;
import pitchboard.site.Measured;
import pitchboard.site.Overhead;
import pitchboard.site.Rise;
import pitchboard.site.Side;
import pitchboard.site.Sights;
import pitchboard.site.Site;

/** Draws what was measured. */
final class RandomSite {
    private final Draws draws;
    private final Tape tape;

    RandomSite(Draws draws, Tape tape) {
        this.draws = draws;
        this.tape = tape;
    }

    Site site() {
        return new Site(
                rise(),
                finish(),
                finish(),
                draws.maybe(50, () -> measured(150, 6000)),
                Stream.generate(this::overhead).limit(draws.between(0, 2)).toList(),
                draws.percent(80),
                new HeadSupport("rim joist", size(140, 400), size(0, 60), draws.maybe(60, () -> size(0, 60))),
                draws.oneOf(List.of(FootSurface.values())),
                draws.oneOf(List.of(Side.values())),
                draws.oneOf(List.of(Side.values())),
                draws.oneOf(List.of(Site.Setting.values())),
                landing(),
                landing(),
                draws.maybe(50, () -> draws.percent(70)),
                draws.maybe(50, () -> size(0, 900)),
                draws.percent(50) ? Sights.NONE : sights());
    }

    private Sights sights() {
        return new Sights(
                look(0, 200),
                look(),
                look(),
                look(0, 25),
                look(0, 250),
                look(),
                look(),
                look(),
                look(),
                look(0, 400),
                look(),
                look(0, 900),
                look(0, 1200),
                look());
    }

    private Optional<Length> look(int lowMm, int highMm) {
        return draws.maybe(50, () -> size(lowMm, highMm));
    }

    private Optional<Boolean> look() {
        return draws.maybe(50, () -> draws.percent(70));
    }

    private Length size(int lowMm, int highMm) {
        return draws.onTape(tape, lowMm, highMm);
    }

    private Measured measured(int lowMm, int highMm) {
        return new Measured(size(lowMm, highMm), certainty());
    }

    private Certainty certainty() {
        return draws.percent(80) ? Certainty.MEASURED : draws.oneOf(List.of(Certainty.values()));
    }

    private Rise rise() {
        if (draws.percent(70)) {
            return new Rise.AtLanding(draws.percent(15) ? measured(80, 600) : measured(600, 4200));
        }
        return new Rise.FromLevelLine(readings(), certainty());
    }

    /** Ground that falls or climbs by up to three in ten. */
    private List<Rise.Reading> readings() {
        List<Rise.Reading> readings = new ArrayList<>();
        Length distance = draws.percent(60) ? Length.ZERO : size(100, 900);
        Length drop = size(500, 3500);
        readings.add(new Rise.Reading(distance, drop));
        for (int i = draws.between(1, 3); i > 0; i--) {
            Length on = size(300, 2500);
            Ratio fall = Ratio.of(draws.between(-30, 30), 100);
            distance = distance.plus(on);
            drop = drop.plus(on.times(fall)).rounded(tape.graduation());
            readings.add(new Rise.Reading(distance, drop));
        }
        return readings;
    }

    private Length finish() {
        if (draws.percent(60)) {
            return Length.ZERO;
        }
        return draws.percent(90) ? size(5, 60) : size(60, 260);
    }

    private Overhead overhead() {
        Length from = draws.percent(80) ? size(0, 4000) : size(0, 500).negated();
        return new Overhead("beam", measured(1500, 6000), from, draws.maybe(50, () -> from.plus(size(40, 1500))));
    }

    private Landing landing() {
        if (draws.percent(40)) {
            return Landing.UNMEASURED;
        }
        return new Landing(
                maybe(600, 1500),
                maybe(600, 1500),
                draws.maybe(50, () -> Ratio.of(draws.between(0, 6), 100)),
                draws.maybe(50, () -> draws.oneOf(List.of(Landing.Door.values()))),
                maybe(100, 900));
    }

    private Optional<Length> maybe(int lowMm, int highMm) {
        return draws.maybe(60, () -> size(lowMm, highMm));
    }
}
