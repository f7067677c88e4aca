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
 * The level place at an end of the flight must be this long in the direction of travel.
 *
 * @param least empty when it must be as long as the flight is wide
 */
public record LandingDepthAtLeast(End end, Clause clause, Optional<Length> least, List<Proviso> provisos)
        implements Rule {
    private static final String CAP = "landing-depth-cap";

    public LandingDepthAtLeast {
        provisos = List.copyOf(provisos);
    }

    /** The depth that is enough however wide the flight is. */
    public static Proviso enough(Clause clause, Length depth) {
        return Proviso.of(CAP, "depth of a landing that is enough for any width", clause, Limit.atMost(depth));
    }

    @Override
    public String id() {
        return end.id("depth-at-least");
    }

    @Override
    public String subject() {
        return "depth of " + end.landingWords();
    }

    @Override
    public Optional<Limit> limit() {
        return least.map(Limit::atLeast);
    }

    @Override
    public LandingDepthAtLeast withLimit(Quantity value) {
        return new LandingDepthAtLeast(end, clause, Optional.of((Length) value), provisos);
    }

    @Override
    public LandingDepthAtLeast withProvisos(List<Proviso> others) {
        return new LandingDepthAtLeast(end, clause, least, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        Length owed = owed(stair);
        return Landings.judge(
                end,
                stair,
                provisos,
                Limit.atLeast(owed),
                end.landing(stair.site()).depth(),
                Verdict.cannotTell(
                        end.fact(Fact.TOP_LANDING_DEPTH, Fact.BOTTOM_LANDING_DEPTH),
                        "measure how far " + end.landingWords() + " goes on level in the direction of travel"),
                depth -> Phrase.of(
                        "lengthen " + end.landingWords() + " by {}", OnTape.noLess(stair, owed.minus(depth))));
    }

    private Length owed(Stair stair) {
        Length owed = least.orElse(stair.brief().width());
        return Proviso.find(provisos, CAP)
                .flatMap(Proviso::limit)
                .map(cap -> Length.min(owed, (Length) cap.value()))
                .orElse(owed);
    }
}
