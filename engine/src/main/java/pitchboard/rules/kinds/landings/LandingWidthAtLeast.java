package pitchboard.rules.kinds.landings;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/**
 * The level place at an end of the flight must be this wide.
 *
 * @param least empty when it must be as wide as the flight
 */
public record LandingWidthAtLeast(End end, Clause clause, Optional<Length> least, List<Proviso> provisos)
        implements Rule {
    public LandingWidthAtLeast {
        provisos = List.copyOf(provisos);
    }

    public LandingWidthAtLeast(End end, Clause clause, List<Proviso> provisos) {
        this(end, clause, Optional.empty(), provisos);
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
    public Optional<Limit> limit() {
        return least.map(Limit::atLeast);
    }

    @Override
    public LandingWidthAtLeast withLimit(Quantity value) {
        return new LandingWidthAtLeast(end, clause, Optional.of((Length) value), provisos);
    }

    @Override
    public LandingWidthAtLeast withProvisos(List<Proviso> others) {
        return new LandingWidthAtLeast(end, clause, least, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        Length owed = least.orElse(stair.brief().width());
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
