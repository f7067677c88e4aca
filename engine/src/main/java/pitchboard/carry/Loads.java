package pitchboard.carry;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;
import pitchboard.source.Figure;
import pitchboard.source.Source;
import pitchboard.strength.AreaLoad;
import pitchboard.strength.Force;
import pitchboard.strength.LineLoad;
import pitchboard.strength.Units;

/**
 * What the flight must carry.
 *
 * @param dead the stair's own weight, over the plan
 * @param live people, over the plan
 * @param point at one place, not together with the live load
 */
record Loads(Sourced<AreaLoad> dead, Sourced<AreaLoad> live, Sourced<Force> point, Safety safety) {
    /** A load and who says so. */
    record Sourced<T>(T load, Source source) {}

    /** By how much loads are raised before they are held against strength; 1 by allowable stress. */
    record Safety(double dead, double live) {
        static final Safety NONE = new Safety(1, 1);
    }

    static AreaLoad area(Reckoned load) {
        return load.unit() == Unit.PSF ? AreaLoad.psf(load.value()) : AreaLoad.kNPerM2(load.value());
    }

    static Force force(Reckoned load) {
        return load.unit() == Unit.POUND ? Force.pounds(load.value()) : new Force(load.value() * 1e3);
    }

    /** On a member that takes a strip of the plan, as held against strength. */
    LineLoad spread(Length strip) {
        return deadAlone(strip).plus(live.load().across(strip).times(safety.live()));
    }

    LineLoad deadAlone(Length strip) {
        return dead.load().across(strip).times(safety.dead());
    }

    Force pointRaised() {
        return point.load().times(safety.live());
    }

    List<Figure> figures(Units units) {
        return List.of(
                Figure.given("D", "weight of the stair itself, over the plan", units.show(dead.load()), dead.source()),
                Figure.given("Q", "people, over the plan", units.show(live.load()), live.source()),
                Figure.given("P", "at one place, not together with Q", units.show(point.load()), point.source()));
    }
}
