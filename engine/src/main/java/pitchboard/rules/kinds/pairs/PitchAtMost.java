package pitchboard.rules.kinds.pairs;

import java.util.List;
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

/** The line of the nosings may be no steeper than this. */
public record PitchAtMost(Clause clause, Angle most) implements Bounded {
    @Override
    public String id() {
        return "pitch-at-most";
    }

    @Override
    public String subject() {
        return "pitch";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public PitchAtMost withLimit(Quantity value) {
        return new PitchAtMost(clause, (Angle) value);
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
        Phrase run = Phrase.of("lengthen the run to {}", leastRun(stair));
        return OtherRisers.more(stair, other -> bound().admits(other.pitch()))
                .map(risers -> run.and(", or ", risers))
                .orElse(run);
    }

    /** The first line of the tape at which the pitch is gentle enough: guessed by the tangent, then made sure of. */
    private Length leastRun(Stair stair) {
        double tangent = Math.tan(most.degrees().approx() * Math.PI / 180);
        Length step = stair.brief().tape().graduation().step();
        Length guess = stair.rise().times(Decimals.ratio(1 / Math.max(tangent, 1e-3), 6));
        Length run = Length.max(step, OnTape.noMore(stair, guess));
        for (int i = 0; i < 3 && !bound().admits(Pitch.of(stair.rise(), run)); i++) {
            run = run.plus(step);
        }
        return run;
    }
}
