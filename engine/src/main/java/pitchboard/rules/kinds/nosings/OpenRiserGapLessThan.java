package pitchboard.rules.kinds.nosings;

import java.util.List;
import pitchboard.brief.Risers;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.plane.Point;
import pitchboard.railing.Ground;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Proviso;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A ball of this size must not pass between open treads, where the opening is high enough above what lies below it for
 * the book to mind. */
public record OpenRiserGapLessThan(Clause clause, Length less, List<Proviso> provisos) implements Bounded {
    private static final String HEIGHT = "open-riser-height";

    public OpenRiserGapLessThan {
        provisos = List.copyOf(provisos);
    }

    /** From this height above what is below it an opening counts; without this proviso all do. */
    public static Proviso above(Clause clause, Length height) {
        return Proviso.of(
                HEIGHT, "height above which an opening between treads counts", clause, Limit.moreThan(height));
    }

    @Override
    public String id() {
        return "open-riser-gap-less-than";
    }

    @Override
    public String subject() {
        return "opening between treads";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public OpenRiserGapLessThan withLimit(Quantity value) {
        return new OpenRiserGapLessThan(clause, (Length) value, provisos);
    }

    @Override
    public OpenRiserGapLessThan withProvisos(List<Proviso> others) {
        return new OpenRiserGapLessThan(clause, less, others);
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        if (!(stair.brief().risers() instanceof Risers.Open)) {
            return Verdict.doesNotApply("boards close the risers");
        }
        Length gap = stair.openingBetweenTreads();
        return bound().admits(gap)
                ? new Verdict.Pass(gap, bound())
                : Proviso.find(provisos, HEIGHT)
                        .map(height -> wide(stair, height))
                        .orElseGet(() -> fail(stair, Place.EVERY_STEP));
    }

    /** The opening lies between the tread below it and the underside of the tread above; in between it is for others. */
    private Verdict wide(Stair stair, Proviso height) {
        for (int tread = 1; tread <= stair.treads(); tread++) {
            if (height.isMetBy(Ground.below(stair, lowerEdge(stair, tread)))) {
                return fail(stair, Place.at("the opening below tread " + tread, upperEdge(stair, tread)));
            }
        }
        for (int tread = 1; tread <= stair.treads(); tread++) {
            if (height.isMetBy(Ground.below(stair, upperEdge(stair, tread)))) {
                return Verdict.cannotTell(
                        "ask whether the opening below tread {} counts: it lies from {} to {} above what is below it",
                        new Count(tread),
                        Ground.below(stair, lowerEdge(stair, tread)),
                        Ground.below(stair, upperEdge(stair, tread)));
            }
        }
        return Reading.findDoubt(restsOn(), stair.site()).orElseGet(() -> none(height));
    }

    private static Verdict none(Proviso height) {
        Quantity above = height.limit().orElseThrow().value();
        return Verdict.doesNotApply("no opening is more than {} above what is below it", above);
    }

    private Verdict fail(Stair stair, Place where) {
        Length gap = stair.openingBetweenTreads();
        return bound().judge(
                        gap,
                        where,
                        () -> Phrase.of(
                                "close the risers with boards, or narrow each opening by a strip of at least {}",
                                OnTape.more(stair, gap.minus(less))));
    }

    private static Point lowerEdge(Stair stair, int tread) {
        return Point.of(stair.riserCut(tread), stair.rise().times(tread - 1L));
    }

    private static Point upperEdge(Stair stair, int tread) {
        return Point.of(stair.riserCut(tread), stair.levelCut(tread));
    }
}
