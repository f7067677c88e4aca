package pitchboard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.site.Certainty;
import pitchboard.site.EdgeAbove;
import pitchboard.site.FootSurface;
import pitchboard.site.HeadSupport;
import pitchboard.site.Landing;
import pitchboard.site.Measured;
import pitchboard.site.Overhead;
import pitchboard.site.Rise;
import pitchboard.site.Side;
import pitchboard.site.Sight;
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
                draws.maybe(50, () -> new EdgeAbove(edge(), edge())),
                draws.percent(50) ? Sights.NONE : sights());
    }

    private Length edge() {
        return draws.percent(40) ? Length.ZERO : size(30, 3000);
    }

    private Sights sights() {
        Map<Sight, Quantity> seen = new EnumMap<>(Sight.class);
        for (Sight sight : Sight.values()) {
            if (draws.percent(50)) {
                seen.put(sight, look(sight));
            }
        }
        return new Sights(seen);
    }

    private Quantity look(Sight sight) {
        return switch (sight) {
            case FLOOR_EDGE -> size(0, 200);
            case LINING_BELOW -> size(0, 25);
            case SILL_DROP -> draws.percent(40) ? size(0, 250) : size(250, 600);
            case WOOD_ABOVE_SOIL -> size(0, 400);
            case FOOTING_DEPTH -> size(0, 900);
            case FROST_DEPTH -> size(0, 1200);
            case END_RISE_STRIPE -> size(0, 60);
            case GROUND_BESIDE -> Ratio.of(1, draws.between(1, 20));
            case GROUND_ALONG_RISER -> Ratio.of(1, draws.between(4, 60));
            default -> Found.of(draws.percent(70));
        };
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
