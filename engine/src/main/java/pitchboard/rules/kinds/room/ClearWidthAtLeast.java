package pitchboard.rules.kinds.room;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The flight must be at least this wide where nothing but the handrails reaches in. */
public record ClearWidthAtLeast(Clause clause, Length least, List<Proviso> provisos) implements Bounded {
    private static final String FEW = "width-for-few";
    private static final String SHORT = "width-of-a-short-flight";
    private static final String CLIMB = "short-flight-climb";

    public ClearWidthAtLeast {
        provisos = List.copyOf(provisos);
    }

    public ClearWidthAtLeast(Clause clause, Length least) {
        this(clause, least, List.of());
    }

    /** A lesser width that is enough where few people use the stair. */
    public static Proviso forFewerThan(Clause clause, int people, Length lesser) {
        return Proviso.of(
                FEW, "width where fewer than " + people + " people use the stair", clause, Limit.atLeast(lesser));
    }

    /** A lesser width that is enough for a flight that climbs less than this. */
    public static List<Proviso> ofAShortFlight(Clause clause, Length lesser, Length climb) {
        return List.of(
                Proviso.of(SHORT, "width of a short flight", clause, Limit.atLeast(lesser)),
                Proviso.of(CLIMB, "climb below which a flight is short", clause, Limit.lessThan(climb)));
    }

    @Override
    public String id() {
        return "clear-width-at-least";
    }

    @Override
    public String subject() {
        return "clear width";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public ClearWidthAtLeast withLimit(Quantity value) {
        return new ClearWidthAtLeast(clause, (Length) value, provisos);
    }

    @Override
    public ClearWidthAtLeast withProvisos(List<Proviso> others) {
        return new ClearWidthAtLeast(clause, least, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        Length width = Widths.clear(stair);
        Limit owed = findShort(stair).orElseGet(this::bound);
        Optional<Proviso> few =
                Proviso.find(provisos, FEW).filter(lesser -> !owed.admits(width) && lesser.isMetBy(width));
        return few.map(lesser -> Verdict.cannotTell(
                        "count who uses the stair: {} is the " + lesser.words() + ", and {} is there",
                        lesser.limit().orElseThrow().value(),
                        width))
                .orElseGet(() -> owed.judge(
                        width,
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("widen the flight by {}", OnTape.noLess(stair, missing(owed, width)))));
    }

    private static Length missing(Limit owed, Length width) {
        return ((Length) owed.value()).minus(width);
    }

    private Optional<Limit> findShort(Stair stair) {
        return Proviso.find(provisos, CLIMB)
                .filter(climb -> climb.isMetBy(stair.flight().totalRise()))
                .flatMap(climb -> Proviso.find(provisos, SHORT).flatMap(Proviso::limit));
    }
}
