package pitchboard.rules.kinds.landings;

import java.util.List;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The place at an end of the flight may slope no more than this. */
public record LandingFallAtMost(End end, Clause clause, Ratio most, List<Proviso> provisos) implements Bounded {
    public LandingFallAtMost {
        provisos = List.copyOf(provisos);
    }

    @Override
    public String id() {
        return end.id("fall-at-most");
    }

    @Override
    public String subject() {
        return "fall of " + end.landingWords();
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public LandingFallAtMost withLimit(Quantity value) {
        return new LandingFallAtMost(end, clause, (Ratio) value, provisos);
    }

    @Override
    public LandingFallAtMost withProvisos(List<Proviso> others) {
        return new LandingFallAtMost(end, clause, most, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Landings.judge(
                end,
                stair,
                provisos,
                bound(),
                end.landing(stair.site()).fall(),
                Verdict.cannotTell(
                        end.fact(Fact.TOP_LANDING_FALL, Fact.BOTTOM_LANDING_FALL),
                        "measure how much " + end.landingWords() + " falls"),
                fall -> Phrase.of("level " + end.landingWords() + " until it falls {} at most", most));
    }
}
