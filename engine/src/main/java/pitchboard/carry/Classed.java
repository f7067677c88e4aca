package pitchboard.carry;

import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
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

    /** {@code sc / (kc·fc) + sm / fm}, with the smaller {@code kc} (6.23). */
    @Override
    public Answer<Double> pressed(Stress pressure, Stress bend, Section bent, Length free, Length heldEvery) {
        double buckling = Math.min(
                design.buckling(bent.depth(), free).value(),
                design.buckling(bent.breadth(), heldEvery).value());
        double alone = pressure.over(design.compression().value()) / buckling;
        return onEdge().map(bending -> alone + bend.over(bending.value()));
    }

    /** {@code st / ft + sm / fm} (6.17). */
    @Override
    public Answer<Double> pulled(Stress pull, Stress bend) {
        double alone = pull.over(design.tension(section.depth()).value());
        return onEdge().map(bending -> alone + bend.over(bending.value()));
    }

    @Override
    public double creep() {
        return design.service().creep();
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
