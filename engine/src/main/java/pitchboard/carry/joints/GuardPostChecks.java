package pitchboard.carry.joints;

import java.util.ArrayList;
import java.util.List;
import pitchboard.source.Confidence;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.Resistance;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/** Holds a {@link GuardPost} against what its wood and its hold-down may bear. */
public final class GuardPostChecks {
    /** What deck guides ask of the hold-down at a post, allowable: 1,800 lb. */
    public static final Force GUIDE_HOLD_DOWN = Force.pounds(1800);

    private static final Practice GUIDE =
            new Practice("Wisconsin SPS 320-325 Appendix B, guard posts", Confidence.READ);

    private GuardPostChecks() {}

    /** The post where it bends most. */
    public static Utilisation bending(GuardPost post, Resistance resistance, Units units) {
        Figure demand = new Figure(
                "fb",
                "bending at the upper bolt",
                "P h / S",
                List.of(
                        new Figure.Input("P", units.show(post.push())),
                        new Figure.Input("h", post.lever()),
                        new Figure.Input("S", units.modulus(post.post()))),
                units.show(post.bending()),
                Working.STATICS);
        return new Utilisation(
                "bending of the guard post",
                "push at the rail",
                demand,
                resistance.figure(units),
                post.bending().over(resistance.value()),
                resistance.factors(),
                post.steps(units));
    }

    /** The hold-down at the upper bolt, by what it is allowed to hold. */
    public static Answer<Utilisation> holdDown(GuardPost post, Force allowed, Units units) {
        if (!allowed.isPositive()) {
            return Answer.unknown("a hold-down holds more than nothing; say what it is allowed to hold");
        }
        return post.couple().map(couple -> {
            List<Figure> steps = post.steps(units);
            Figure capacity = Figure.given("Ta", "allowed of the hold-down", units.show(allowed), GUIDE);
            return new Utilisation(
                    "hold-down of the guard post",
                    "push at the rail",
                    steps.get(2),
                    capacity,
                    couple.pull().newtons() / allowed.newtons(),
                    List.of(),
                    steps);
        });
    }

    /** What tests found, for every post; a notched one is warned of first. */
    public static List<Caution> cautions(Foothold foothold) {
        List<Caution> cautions = new ArrayList<>();
        if (foothold == Foothold.NOTCHED) {
            cautions.add(Caution.NOTCHED_POST);
        }
        cautions.add(Caution.BOLTS_ALONE);
        cautions.add(Caution.HOLD_DOWN);
        cautions.add(Caution.SHORT_LOAD);
        return cautions;
    }
}
