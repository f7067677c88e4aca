package pitchboard.stair;

import java.util.Comparator;
import pitchboard.brief.Wishes;
import pitchboard.measure.Length;

/**
 * Better stairs first: nearest to the targets, then the most step formulas met, then 2R + T nearest to 25 in (US Army
 * Engineer subcourse EN5156, rule 1), then fewer risers, then the longer run.
 */
record Ranking(Wishes wishes) implements Comparator<Option> {
    private static final Length PACE = Length.inches(25);

    @Override
    public int compare(Option a, Option b) {
        return Comparator.comparing(this::fromTargets)
                .thenComparing(option -> -option.comforts().size())
                .thenComparing(Ranking::fromPace)
                .thenComparing(option -> option.stair().flight().risers())
                .thenComparing(option -> option.stair().run().negated())
                .compare(a, b);
    }

    Comparator<Option> afterFewestObjections() {
        return Comparator.<Option>comparingInt(option -> option.objections().size())
                .thenComparingDouble(Option::worstMiss)
                .thenComparing(this);
    }

    private Length fromTargets(Option option) {
        Length rise = wishes.targetRise()
                .map(target -> option.stair().rise().minus(target).abs())
                .orElse(Length.ZERO);
        Length run = wishes.targetRun()
                .map(target -> option.stair().run().minus(target).abs())
                .orElse(Length.ZERO);
        return rise.plus(run);
    }

    private static Length fromPace(Option option) {
        Stair stair = option.stair();
        return stair.rise().times(2).plus(stair.run()).minus(PACE).abs();
    }
}
