package pitchboard.rules.kinds.landings;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The level place at an end of the flight must be as wide as the flight. */
public record LandingWidthAtLeast(End end, Clause clause, List<Proviso> provisos) implements Rule {
    public LandingWidthAtLeast {
        provisos = List.copyOf(provisos);
    }

    @Override
    public String id() {
        return end.id("width-at-least");
    }

    @Override
    public String subject() {
        return "width of " + end.landingWords();
    }

    @Override
    public LandingWidthAtLeast withProvisos(List<Proviso> others) {
        return new LandingWidthAtLeast(end, clause, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        Length owed = stair.brief().width();
        return Landings.judge(
                end,
                stair,
                provisos,
                Limit.atLeast(owed),
                end.landing(stair.site()).width(),
                Verdict.cannotTell(
                        end.fact(Fact.TOP_LANDING_WIDTH, Fact.BOTTOM_LANDING_WIDTH),
                        "measure how wide " + end.landingWords() + " is across the direction of travel"),
                width -> Phrase.of("widen " + end.landingWords() + " by {}", OnTape.noLess(stair, owed.minus(width))));
    }
}
