package pitchboard.rules.kinds.guards;

import java.util.Comparator;
import java.util.Optional;
import pitchboard.brief.Guard;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.railing.Bay;
import pitchboard.railing.Filling;
import pitchboard.railing.GuardLayout;
import pitchboard.railing.Spacing;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A ball of this size must not pass through the guard. */
public record GuardOpeningLessThan(Clause clause, Length less) implements Bounded {
    @Override
    public String id() {
        return "guard-opening-less-than";
    }

    @Override
    public String subject() {
        return "widest opening in the guard";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public GuardOpeningLessThan withLimit(Quantity value) {
        return new GuardOpeningLessThan(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Guards.findLaidOut(stair, this::judge).orElseGet(() -> judgeStated(stair));
    }

    private Verdict judge(GuardLayout guard) {
        return guard.opening()
                .map(opening -> bound().judge(opening, Guards.GUARD, () -> remedy(guard)))
                .orElseGet(() -> Verdict.doesNotApply("the guard has a single post and no bay"));
    }

    /** How many pieces the widest bay needs; narrower bays need no more. */
    private Phrase remedy(GuardLayout guard) {
        Filling filling = guard.bays().stream()
                .max(Comparator.comparing(Bay::clear))
                .map(bay -> guard.filling(bay, Optional.of(less)))
                .orElseThrow();
        if (filling instanceof Filling.Balusters balusters && bound().admits(filling.opening())) {
            return use(balusters.spacing(), "balusters in the widest bay");
        }
        if (filling instanceof Filling.Boards boards && bound().admits(filling.opening())) {
            return use(boards.spacing(), "boards in every bay");
        }
        return Phrase.of("use narrower pieces, so that more find room and leave gaps of less than {}", less);
    }

    private static Phrase use(Spacing spacing, String what) {
        return Phrase.of("use {} " + what + ": the gap becomes {}", new Count(spacing.count()), spacing.gap());
    }

    private Verdict judgeStated(Stair stair) {
        return Guards.judge(
                stair,
                Guard::opening,
                Verdict.cannotTell(Fact.GUARD_OPENING, "decide how wide the openings in the guard are"),
                opening -> bound().judge(
                                opening,
                                Guards.GUARD,
                                () -> Phrase.of("leave openings of {} at most", OnTape.less(stair, less))));
    }
}
