package pitchboard.strength;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Reckoned;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.source.Source;

/** Stresses and deflections of rectangular members against what they may be. One line per formula of the handbooks. */
public record MemberChecks(Units units) {
    /** {@code fb = M / S}. */
    public Utilisation bending(String governing, Figure moment, Moment value, Section section, Resistance may) {
        Stress stress = bending(value, section);
        Figure demand = figure(
                "fb",
                "bending stress",
                "M ÷ S",
                units.show(stress),
                new Figure.Input("M", units.show(value)),
                new Figure.Input("S", units.modulus(section)));
        return stress("bending", governing, List.of(moment), demand, stress, may);
    }

    public static Stress bending(Moment moment, Section section) {
        return new Stress(moment.nMm() / section.modulusMm3());
    }

    /** {@code fv = 3·V / (2·b·d)}. */
    public Utilisation shear(String governing, Figure force, Force value, Section section, Resistance may) {
        Stress stress = shear(value, section);
        Figure demand = figure(
                "fv",
                "shear stress",
                "3·V ÷ (2·A)",
                units.show(stress),
                new Figure.Input("V", units.show(value)),
                new Figure.Input("A", units.area(section)));
        return stress("shear", governing, List.of(force), demand, stress, may);
    }

    public static Stress shear(Force force, Section section) {
        return new Stress(1.5 * force.newtons() / section.areaMm2());
    }

    /** {@code fc,perp = R / (b·l)}. */
    public Utilisation bearing(
            String governing, Figure reaction, Force value, Length breadth, Length length, Resistance may) {
        Stress stress = new Stress(value.newtons() / (breadth.approxMm() * length.approxMm()));
        Figure demand = figure(
                "fc,perp",
                "pressure where it stands",
                "R ÷ (b·l)",
                units.show(stress),
                new Figure.Input("R", units.show(value)),
                new Figure.Input("b", breadth),
                new Figure.Input("l", length));
        return stress("bearing", governing, List.of(reaction), demand, stress, may);
    }

    private Utilisation stress(
            String what, String governing, List<Figure> steps, Figure demand, Stress stress, Resistance may) {
        return new Utilisation(
                what, governing, demand, may.figure(units), stress.over(may.value()), may.factors(), steps);
    }

    /**
     * A deflection against a part of the span.
     *
     * @param part such as 360 for a 360th
     * @param stiffness with the factors that made it what it is
     * @param deflection with its working
     */
    public Utilisation deflection(
            String governing, Figure deflection, double mm, Length span, int part, Resistance stiffness, Figure limit) {
        double most = span.approxMm() / part;
        return new Utilisation(
                "deflection",
                governing,
                deflection,
                limit,
                mm / most,
                stiffness.factors(),
                List.of(stiffness.figure(units)));
    }

    /** Such as {@code L ÷ 360}. */
    public static Figure partOf(Length span, int part, Source source) {
        return new Figure(
                "L/" + part,
                "deflection it may have",
                "L ÷ " + part,
                List.of(new Figure.Input("L", span)),
                Units.near(span.approxMm() / part),
                source);
    }

    /** A figure of plain statics. */
    public static Figure figure(
            String symbol, String meaning, String expression, Quantity value, Figure.Input... inputs) {
        return new Figure(symbol, meaning, expression, List.of(inputs), value, Practice.STATICS);
    }

    /** A share of one, as a figure. */
    public static Figure share(String symbol, String meaning, String expression, double share, Figure.Input... inputs) {
        return figure(symbol, meaning, expression, Reckoned.factor(share), inputs);
    }
}
