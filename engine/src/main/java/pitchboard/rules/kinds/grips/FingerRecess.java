package pitchboard.rules.kinds.grips;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.rails.Rails;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** One measure of the finger recesses that a thick handrail needs. */
public record FingerRecess(Part part, Clause clause, Length value, List<Proviso> provisos) implements Bounded {
    private static final String FROM = "recess-from-perimeter";

    /** What is measured. */
    public enum Part {
        START("recess-start-at-most", "start of the finger recess, below the top"),
        DEPTH("recess-depth-at-least", "depth of the finger recess"),
        HEIGHT("recess-height-at-least", "height over which the finger recess keeps its depth");

        private final String id;
        private final String subject;

        Part(String id, String subject) {
            this.id = id;
            this.subject = subject;
        }
    }

    public FingerRecess {
        provisos = List.copyOf(provisos);
    }

    /** The length around beyond which a rail needs recesses. */
    public static Proviso beyond(Clause clause, Length perimeter) {
        String words = "length around beyond which a rail needs finger recesses";
        return Proviso.of(FROM, words, clause, Limit.moreThan(perimeter));
    }

    @Override
    public String id() {
        return part.id;
    }

    @Override
    public String subject() {
        return part.subject;
    }

    @Override
    public Limit bound() {
        return part == Part.START ? Limit.atMost(value) : Limit.atLeast(value);
    }

    @Override
    public FingerRecess withLimit(Quantity other) {
        return new FingerRecess(part, clause, (Length) other, provisos);
    }

    @Override
    public FingerRecess withProvisos(List<Proviso> others) {
        return new FingerRecess(part, clause, value, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        String ask = "measure the " + part.subject + ", on both sides of the rail: "
                + bound().bound().words() + " {}";
        return judge(stair, provisos, rail -> Verdict.cannotTell(ask, value), this::judge);
    }

    private Verdict judge(Handrail.Grip.Recessed rail) {
        Handrail.Grip.Recess recess = rail.recess();
        Length measured = switch (part) {
            case START -> recess.start();
            case DEPTH -> recess.depth();
            case HEIGHT -> recess.height();
        };
        String words = "make the " + part.subject + " " + bound().bound().words() + " {}";
        return bound().judge(measured, Rails.RAIL, () -> Phrase.of(words, value));
    }

    /** Judges a rail whose recesses are described, or one that is thick enough to need some. */
    static Verdict judge(
            Stair stair,
            List<Proviso> provisos,
            Function<Handrail.Grip.Rectangle, Verdict> byPlainRail,
            Function<Handrail.Grip.Recessed, Verdict> byRecessed) {
        return Grips.judge(
                stair,
                grip -> grip instanceof Handrail.Grip.Recessed recessed
                        ? ifThick(provisos, recessed.section(), () -> byRecessed.apply(recessed))
                        : Grips.judgeRectangle(stair, rail -> ifThick(provisos, rail, () -> byPlainRail.apply(rail))));
    }

    private static Verdict ifThick(List<Proviso> provisos, Handrail.Grip.Rectangle rail, Supplier<Verdict> judged) {
        return Proviso.find(provisos, FROM)
                        .filter(from -> !from.isMetBy(Grips.perimeter(rail)))
                        .isPresent()
                ? Verdict.doesNotApply("the rail is slim enough to need no finger recesses")
                : judged.get();
    }
}
