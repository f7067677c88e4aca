package pitchboard.carry.members;

import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Elastic;
import pitchboard.strength.Factor;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;
import pitchboard.strength.timber.Adjusting;
import pitchboard.strength.timber.Bracing;
import pitchboard.strength.timber.Columns;
import pitchboard.strength.timber.Nds;
import pitchboard.strength.timber.WoodHandbook;

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
    public Answer<Resistance> onEdgeHeldEvery(Length apart) {
        return board.bendingOnEdge(new Bracing.AtPoints(apart, Bracing.Load.MIDDLE));
    }

    @Override
    public Answer<Resistance> asPost(Length free) {
        Length thinner = Length.min(board.size().actualThickness(), board.size().actualWidth());
        return Columns.compression(board, free, thinner);
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
    public Answer<Interaction> interaction(Section section, Length free, Length heldEvery) {
        Stress critical = Columns.critical(board, free, section.depth());
        return Columns.compression(board, heldEvery, section.breadth())
                .then(sideways -> Columns.compression(board, free, section.depth())
                        .map(upward -> new Stress(Math.min(
                                sideways.value().nPerMm2(), upward.value().nPerMm2()))))
                .then(compression -> onEdge().then(bending -> board.tension()
                        .map(tension -> new Along(compression, bending.value(), tension.value(), critical))));
    }

    /** NDS 2018, 3.9. */
    private record Along(Stress compression, Stress bending, Stress tension, Stress critical) implements Interaction {
        @Override
        public Answer<Double> pressed(Stress pressure, Stress bend) {
            return Columns.together(pressure, compression, bend, bending, critical);
        }

        @Override
        public double pulled(Stress pull, Stress bend) {
            return Columns.pulled(pull, tension, bend, bending);
        }
    }

    @Override
    public double creep() {
        return 0;
    }

    @Override
    public Elastic elastic() {
        return WoodHandbook.ratios(board.values().species())
                .tangential(modulus().value());
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
