package pitchboard.rules.kinds.members;

import java.util.List;
import pitchboard.brief.Risers;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Stringers may stand no farther apart than this, middle to middle; farther where riser boards carry the treads. */
public record StringerSpacingAtMost(Clause clause, Length most, List<Proviso> provisos) implements Bounded {
    public StringerSpacingAtMost {
        provisos = List.copyOf(provisos);
    }

    private static final String RISERS = "stringer-spacing-with-risers";

    /** The greater spacing where riser boards carry the front of every tread. */
    public static Proviso withRisers(Clause clause, Length greater) {
        return Proviso.of(RISERS, "spacing where riser boards carry the treads", clause, Limit.atMost(greater));
    }

    @Override
    public String id() {
        return "stringer-spacing-at-most";
    }

    @Override
    public String subject() {
        return "spacing of the stringers";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public StringerSpacingAtMost withLimit(Quantity value) {
        return new StringerSpacingAtMost(clause, (Length) value, provisos);
    }

    @Override
    public StringerSpacingAtMost withProvisos(List<Proviso> others) {
        return new StringerSpacingAtMost(clause, most, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        Length spacing = Spacing.of(stair);
        boolean byRisers = !bound().admits(spacing)
                && stair.brief().risers() instanceof Risers.Boards
                && Proviso.find(provisos, RISERS)
                        .filter(proviso -> proviso.isMetBy(spacing))
                        .isPresent();
        return byRisers
                ? Verdict.cannotTell(
                        "see that the riser boards carry the front of every tread: only then may stringers stand {} apart",
                        spacing)
                : bound().judge(
                                spacing,
                                Place.WHOLE_FLIGHT,
                                () -> Phrase.of("put in {} stringers", Spacing.stringersFor(stair, most)));
    }
}
