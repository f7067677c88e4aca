package pitchboard.stair;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.brief.Wishes;
import pitchboard.measure.Length;

/**
 * Better stairs first: nearest to the targets, then the most step formulas met, then 2R + T nearest to 25 in (US Army
 * Engineer subcourse EN5156, rule 1), then fewer risers, then the longer run.
 */
record Ranking(Wishes wishes) {
    private static final Length PACE = Length.inches(25);

    List<Option> bestFirst(List<Option> options) {
        return options.stream()
                .map(this::standing)
                .sorted(Standing.BEST_FIRST)
                .map(Standing::option)
                .toList();
    }

    Optional<Option> leastBad(Stream<Option> options) {
        return options.map(this::standing).min(Standing.LEAST_BAD_FIRST).map(Standing::option);
    }

    private Standing standing(Option option) {
        Stair stair = option.stair();
        Length fromTargets = away(stair.rise(), wishes.targetRise()).plus(away(stair.run(), wishes.targetRun()));
        Length fromPace = stair.rise().times(2).plus(stair.run()).minus(PACE).abs();
        return new Standing(option, fromTargets, option.comforts().size(), fromPace);
    }

    private static Length away(Length from, Optional<Length> target) {
        return target.map(wanted -> from.minus(wanted).abs()).orElse(Length.ZERO);
    }

    /** What an option is ranked by, worked out once. */
    private record Standing(Option option, Length fromTargets, int comforts, Length fromPace) {
        static final Comparator<Standing> BEST_FIRST = Comparator.comparing(Standing::fromTargets)
                .thenComparing(Comparator.comparingInt(Standing::comforts).reversed())
                .thenComparing(Standing::fromPace)
                .thenComparingInt(Standing::risers)
                .thenComparing(Comparator.comparing(Standing::run).reversed());

        static final Comparator<Standing> LEAST_BAD_FIRST = Comparator.comparingInt(Standing::objections)
                .thenComparingDouble(Standing::worstMiss)
                .thenComparing(BEST_FIRST);

        int objections() {
            return option.objections().size();
        }

        double worstMiss() {
            return option.worstMiss();
        }

        int risers() {
            return option.stair().flight().risers();
        }

        Length run() {
            return option.stair().run();
        }
    }
}
