package pitchboard.carry.joints;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.source.Confidence;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.strength.AreaLoad;
import pitchboard.strength.Force;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/** A concrete pad on the ground under the foot. */
public record Pad(Length length, Length width, Length thickness) {
    /** Plain concrete, in pounds for a cubic foot. */
    private static final double WEIGHT_PCF = 150;

    private static final Practice WEIGHT = new Practice("plain concrete, 150 lb/ft³", Confidence.COMMON_PRACTICE);
    private static final double MM_PER_FOOT = 304.8;

    public Pad {
        if (!length.isPositive() || !width.isPositive() || !thickness.isPositive()) {
            throw new IllegalArgumentException("a pad has a length, a width and a thickness above zero");
        }
    }

    private double areaMm2() {
        return length.approxMm() * width.approxMm();
    }

    public double squareFeet() {
        return areaMm2() / (MM_PER_FOOT * MM_PER_FOOT);
    }

    public Force weight() {
        return Force.pounds(squareFeet() * thickness.approxMm() / MM_PER_FOOT * WEIGHT_PCF);
    }

    /** The least area that carries a load on such ground, the pad's own weight left out, in square feet. */
    public static double neededSquareFeet(Force load, Soil soil) {
        return load.pounds() / soil.bearing().psf();
    }

    /** What presses on the ground, weight included, against what the ground is presumed to carry. */
    public Utilisation bearing(Force load, Soil soil, Units units) {
        AreaLoad pressure = new AreaLoad((load.newtons() + weight().newtons()) / areaMm2());
        Figure own = Figure.given("G", "weight of the pad", units.show(weight()), WEIGHT);
        Figure demand = new Figure(
                "q",
                "pressure under the pad",
                "(R + G) / (length × width)",
                List.of(
                        new Figure.Input("R", units.show(load)),
                        own.asInput(),
                        new Figure.Input("length", length),
                        new Figure.Input("width", width)),
                units.show(pressure),
                Working.STATICS);
        Figure capacity = Figure.given("qa", "presumed bearing of the ground", units.show(soil.bearing()), Soil.SOURCE);
        double ratio = pressure.nPerMm2() / soil.bearing().nPerMm2();
        return new Utilisation(
                "ground under the pad", "dead and live load", demand, capacity, ratio, List.of(), List.of(own));
    }

    /** What one post presses on the ground through a square footing, whose own weight is left out. */
    public static Utilisation pressure(Force load, Length side, Soil soil, Units units) {
        AreaLoad pressure = new AreaLoad(load.newtons() / (side.approxMm() * side.approxMm()));
        Figure demand = new Figure(
                "q",
                "pressure under the footing",
                "Rs / side²",
                List.of(new Figure.Input("Rs", units.show(load)), new Figure.Input("side", side)),
                units.show(pressure),
                Working.STATICS);
        Figure capacity = Figure.given("qa", "presumed bearing of the ground", units.show(soil.bearing()), Soil.SOURCE);
        return new Utilisation(
                "ground under the footing",
                "dead and live load",
                demand,
                capacity,
                pressure.nPerMm2() / soil.bearing().nPerMm2(),
                List.of(),
                List.of());
    }

    public static List<Caution> cautions() {
        return List.of(Caution.TRUE_SOIL, Caution.FROST);
    }
}
