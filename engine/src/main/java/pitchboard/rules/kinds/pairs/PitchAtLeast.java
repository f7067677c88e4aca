package pitchboard.rules.kinds.pairs;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Angle;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Pitch;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.rules.kinds.OtherRisers;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The line of the nosings may be no flatter than this. */
public record PitchAtLeast(Clause clause, Angle least) implements Bounded {

    @Override
    public String id() {
        return "pitch-at-least";
    }

    @Override
    public String subject() {
        return "pitch";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public PitchAtLeast withLimit(Quantity value) {
        return new PitchAtLeast(clause, (Angle) value);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(stair.pitch(), Place.WHOLE_FLIGHT, () -> remedy(stair));
    }

    private Phrase remedy(Stair stair) {
        Optional<Phrase> risers = OtherRisers.fewer(stair, other -> bound().admits(other.pitch()));
        Phrase run = Phrase.of("shorten the run to {}", greatestRun(stair));
        return risers.map(other -> run.and(", or ", other)).orElse(run);
    }

    /** The last line of the tape at which the pitch is steep enough: guessed by the tangent, then made sure of. */
    private Length greatestRun(Stair stair) {
        double tangent = Math.tan(least.degrees().approx() * Math.PI / 180);
        Length step = stair.brief().tape().graduation().step();
        Length guess = stair.rise().times(Decimals.ratio(1 / Math.max(tangent, 1e-3), 6));
        Length run = OnTape.noLess(stair, guess);
        while (run.isMoreThan(step) && !bound().admits(Pitch.of(stair.rise(), run))) {
            run = run.minus(step);
        }
        return run;
    }
}
