package pitchboard.rules.kinds.members;

import java.util.List;
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

/** The boards of the stringers must be at least this thick; less will do where they are held along their length. */
public record StringerThicknessAtLeast(Clause clause, Length least, List<Proviso> provisos) implements Bounded {
    public StringerThicknessAtLeast {
        provisos = List.copyOf(provisos);
    }

    private static final String HELD = "held-stringer-thickness";

    /** The lesser thickness of a stringer that is held along its whole length. */
    public static Proviso whenHeld(Clause clause, Length lesser) {
        return Proviso.of(HELD, "thickness of a stringer held along its length", clause, Limit.atLeast(lesser));
    }

    @Override
    public String id() {
        return "stringer-thickness-at-least";
    }

    @Override
    public String subject() {
        return "thickness of the stringer boards";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public StringerThicknessAtLeast withLimit(Quantity value) {
        return new StringerThicknessAtLeast(clause, (Length) value, provisos);
    }

    @Override
    public StringerThicknessAtLeast withProvisos(List<Proviso> others) {
        return new StringerThicknessAtLeast(clause, least, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        Length thickness = stair.brief().stringers().stock().thickness();
        boolean held = !bound().admits(thickness)
                && Proviso.find(provisos, HELD)
                        .filter(proviso -> proviso.isMetBy(thickness))
                        .isPresent();
        return held
                ? Verdict.cannotTell(
                        "see that the stringers are held along their whole length: only then will {} do", thickness)
                : bound().judge(
                                thickness,
                                Place.WHOLE_FLIGHT,
                                () -> Phrase.of("cut the stringers from boards at least {} thick", least));
    }
}
