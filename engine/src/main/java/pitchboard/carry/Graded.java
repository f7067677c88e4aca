package pitchboard.carry;

import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;
import pitchboard.strength.timber.Adjusting;
import pitchboard.strength.timber.Bracing;
import pitchboard.strength.timber.Columns;
import pitchboard.strength.timber.Nds;

/** A board by allowable stress. */
record Graded(Adjusting board) implements Material {
    private static final Bracing HELD = new Bracing.Held("the treads hold its edge at every step");

    @Override
    public String name() {
        return board.values().name();
    }

    @Override
    public Answer<Resistance> onEdge() {
        return board.bendingOnEdge(HELD);
    }

    @Override
    public Answer<Resistance> onFlat() {
        return board.bendingOnFlat();
    }

    @Override
    public Resistance shear() {
        return board.shear();
    }

    /** At an end, so that no short support bears more. */
    @Override
    public Resistance bearing(Length length) {
        return board.bearing(length, Length.ZERO);
    }

    @Override
    public Resistance modulus() {
        return board.modulus();
    }

    @Override
    public Answer<Double> pressed(Stress pressure, Stress bend, Section section, Length free, Length heldEvery) {
        Answer<Resistance> sideways = Columns.compression(board, heldEvery, section.breadth());
        Answer<Resistance> upward = Columns.compression(board, free, section.depth());
        Stress critical = Columns.critical(board, free, section.depth());
        return sideways.then(one -> upward.then(other -> {
            Stress least =
                    new Stress(Math.min(one.value().nPerMm2(), other.value().nPerMm2()));
            return onEdge().then(bending -> Columns.together(pressure, least, bend, bending.value(), critical));
        }));
    }

    @Override
    public Answer<Double> pulled(Stress pull, Stress bend) {
        return board.tension()
                .then(tension -> onEdge().map(bending -> Columns.pulled(pull, tension.value(), bend, bending.value())));
    }

    @Override
    public double creep() {
        return 0;
    }

    /** {@code (dn / d)²} on the depth that is left. */
    @Override
    public Answer<Factor> notchAtSupport(Length depth, Length left, Length away) {
        if (!left.isPositive() || left.isMoreThan(depth)) {
            return Answer.unknown("nothing is left above the notch at the head");
        }
        double share = left.approxMm() / depth.approxMm();
        return Answer.known(new Factor(
                "(dn/d)²",
                "notch in the edge in tension",
                share * share,
                "the notch at the head leaves part of the depth",
                Nds.SPECIFICATION.memory("3.4.3.2")));
    }

    @Override
    public Source source() {
        return Nds.SPECIFICATION.read("chapters 3 and 4");
    }
}
