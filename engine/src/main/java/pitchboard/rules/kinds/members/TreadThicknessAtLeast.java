package pitchboard.rules.kinds.members;

import java.util.List;
import java.util.Optional;
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

/** Treads must be at least this thick; thicker where they are open and span far. */
public record TreadThicknessAtLeast(Clause clause, Length least, List<Proviso> provisos) implements Bounded {
    public TreadThicknessAtLeast {
        provisos = List.copyOf(provisos);
    }

    private static final String OPEN = "open-tread-thickness";
    private static final String SPAN = "open-tread-span";

    /** The greater thickness of open treads whose stringers stand farther apart than this. */
    public static List<Proviso> ofOpenTreads(Clause clause, Length thickness, Length span) {
        return List.of(
                Proviso.of(OPEN, "thickness of open treads that span far", clause, Limit.atLeast(thickness)),
                Proviso.of(SPAN, "spacing of stringers from which open treads span far", clause, Limit.moreThan(span)));
    }

    @Override
    public String id() {
        return "tread-thickness-at-least";
    }

    @Override
    public String subject() {
        return "thickness of the treads";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public TreadThicknessAtLeast withLimit(Quantity value) {
        return new TreadThicknessAtLeast(clause, (Length) value, provisos);
    }

    @Override
    public TreadThicknessAtLeast withProvisos(List<Proviso> others) {
        return new TreadThicknessAtLeast(clause, least, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        Limit limit = findOpen(stair).orElseGet(this::bound);
        return limit.judge(
                stair.treadThickness(),
                Place.EVERY_STEP,
                () -> Phrase.of("use treads at least {} thick", limit.value()));
    }

    /** The greater thickness, when nothing carries the front of the treads and the stringers stand far apart. */
    private Optional<Limit> findOpen(Stair stair) {
        return Proviso.find(provisos, SPAN)
                .filter(span -> stair.brief().risers() instanceof Risers.Open && span.isMetBy(Spacing.of(stair)))
                .flatMap(span -> Proviso.find(provisos, OPEN).flatMap(Proviso::limit));
    }
}
