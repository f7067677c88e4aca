package pitchboard.carry.members;

import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Elastic;
import pitchboard.strength.Factor;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;
import pitchboard.strength.eurocode.Designing;
import pitchboard.strength.eurocode.Eurocode;
import pitchboard.strength.eurocode.Notch;

/**
 * A board of a strength class.
 *
 * @param section thickness and width of the board as it was graded
 */
record Classed(Designing design, Section section) implements Material {
    @Override
    public String name() {
        return design.timber().name();
    }

    /** The treads hold the edge, so it cannot tip; cutting the depth down earns no size factor. */
    @Override
    public Answer<Resistance> onEdge() {
        return Answer.known(design.bending(section.depth())
                .with(Factor.idle(
                        "kcrit",
                        "stability",
                        "the treads hold its edge at every step",
                        Eurocode.TIMBER.read("6.3.3"))));
    }

    @Override
    public Answer<Resistance> onFlat() {
        return Answer.known(design.bending(section.breadth())
                .with(Factor.idle(
                        "kcrit",
                        "stability",
                        "it is wider than deep, so it cannot tip",
                        Eurocode.TIMBER.read("6.3.3"))));
    }

    /** {@code lef = 0.9·l + 2·h} (EN 1995-1-1, Table 6.1), the load on the edge in compression. */
    @Override
    public Answer<Resistance> onEdgeHeldEvery(Length apart) {
        Length effective = apart.times(Ratio.of(9, 10)).plus(section.depth().times(2));
        return Answer.known(design.bending(section.depth()).with(design.stability(section, effective)));
    }

    @Override
    public Answer<Resistance> asPost(Length free) {
        Length thinner = Length.min(section.depth(), section.breadth());
        return Answer.known(design.compression().with(design.buckling(thinner, free)));
    }

    @Override
    public Resistance shear() {
        return design.shear();
    }

    @Override
    public Resistance bearing(Length length) {
        return design.bearing();
    }

    @Override
    public Resistance modulus() {
        return design.modulus();
    }

    @Override
    public Answer<Interaction> interaction(Section bent, Length free, Length heldEvery) {
        double buckling = Math.min(
                design.buckling(bent.depth(), free).value(),
                design.buckling(bent.breadth(), heldEvery).value());
        Stress compression = design.compression().value().times(buckling);
        Stress tension = design.tension(section.depth()).value();
        return onEdge().map(bending -> new Along(compression, bending.value(), tension));
    }

    /** {@code sc / (kc·fc) + sm / fm} (6.23) and {@code st / ft + sm / fm} (6.17). */
    private record Along(Stress compression, Stress bending, Stress tension) implements Interaction {
        @Override
        public Answer<Double> pressed(Stress pressure, Stress bend) {
            return Answer.known(pressure.over(compression) + bend.over(bending));
        }

        @Override
        public double pulled(Stress pull, Stress bend) {
            return pull.over(tension) + bend.over(bending);
        }
    }

    @Override
    public double creep() {
        return design.service().creep();
    }

    @Override
    public Elastic elastic() {
        return design.timber().elastic();
    }

    @Override
    public Answer<Factor> notchAtSupport(Length depth, Length left, Length away) {
        return new Notch(depth, left, away, 0)
                .factor()
                .map(value -> new Factor(
                        "kv",
                        "notch at the support",
                        value,
                        "the notch at the head leaves part of the depth",
                        Eurocode.TIMBER.elsewhere("6.5.2")));
    }

    @Override
    public Source source() {
        return Eurocode.TIMBER.read("section 6");
    }
}
