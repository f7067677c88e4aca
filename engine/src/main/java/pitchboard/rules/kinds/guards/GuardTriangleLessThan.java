package pitchboard.rules.kinds.guards;

import pitchboard.brief.Guard;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Triangle;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A ball of this size must not pass through the triangle of tread, riser and bottom rail. */
public record GuardTriangleLessThan(Clause clause, Length less) implements Bounded {
    @Override
    public String id() {
        return "guard-triangle-less-than";
    }

    @Override
    public String subject() {
        return "triangle of tread, riser and bottom rail";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public GuardTriangleLessThan withLimit(Quantity value) {
        return new GuardTriangleLessThan(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Guards.findLaidOut(stair, this::judge).orElseGet(() -> judgeStated(stair));
    }

    private Verdict judge(GuardLayout guard) {
        Triangle triangle = guard.triangle();
        return bound().judge(triangle.ball(), Guards.GUARD, () -> remedy(triangle));
    }

    /** Even a rail on the nosings may leave too much; then only closing the triangle helps. */
    private Phrase remedy(Triangle triangle) {
        Length touching = triangle.heightFor(less);
        Length height = OnTape.less(triangle.stair(), touching);
        return height.isNegative()
                ? Phrase.of("close the triangle on every step: even a rail on the nosings lets a ball of {} pass", less)
                : Phrase.of(
                        "lower the bottom rail to {} above the nosings: a ball of {} passes",
                        height,
                        new Triangle(triangle.stair(), height).ball());
    }

    private Verdict judgeStated(Stair stair) {
        return Guards.judge(
                stair,
                Guard::triangle,
                Verdict.cannotTell(
                        Fact.GUARD_TRIANGLE,
                        "decide how high the bottom rail of the guard is above the nosings: what ball passes below it"),
                ball -> bound().judge(
                                ball,
                                Guards.GUARD,
                                () -> Phrase.of(
                                        "lower the bottom rail until only a ball of {} passes",
                                        OnTape.less(stair, less))));
    }
}
