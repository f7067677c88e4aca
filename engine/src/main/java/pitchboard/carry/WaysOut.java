package pitchboard.carry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.StringerStock;
import pitchboard.brief.Stringers;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.StringerCase;
import pitchboard.carry.members.StringerChecks;
import pitchboard.carry.members.StringerReactions;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.parts.StringerSpacing;
import pitchboard.stair.Stair;
import pitchboard.strength.Section;
import pitchboard.strength.TwoSpans;
import pitchboard.strength.Units;

/**
 * What would make failing stringers pass, each reckoned through again. Hours are rules of thumb for two people, common
 * practice without a source; they only rank.
 */
final class WaysOut {
    private static final int MOST_MORE = 4;
    private static final double HOURS_PER_STRINGER = 2.5;
    private static final double HOURS_PER_STRONGBACK = 1;
    private static final double HOURS_FOR_SUPPORT = 5;
    private static final double HOURS_PER_DEEPER = 0.5;
    private static final double HOURS_PER_SOLID = 1.5;
    private static final double HOURS_PER_CLEATED_TREAD = 0.25;
    private static final double HOURS_TO_LAY_OUT_ANEW = 0.5;

    private final Stair stair;
    private final Basis basis;
    private final StringerCase it;

    WaysOut(Stair stair, Basis basis, StringerCase it) {
        this.stair = stair;
        this.basis = basis;
        this.it = it;
    }

    private Stringers stringers() {
        return stair.brief().stringers();
    }

    /**
     * Those that help first, least work first.
     *
     * @param others stairs that could be built here instead
     */
    List<WayOut> all(List<Stair> others) {
        List<WayOut> found = new ArrayList<>();
        moreStringers().ifPresent(found::add);
        support().ifPresent(found::add);
        strongback(1).ifPresent(found::add);
        strongback(2).ifPresent(found::add);
        deeper().ifPresent(found::add);
        solid().ifPresent(found::add);
        shorter(others).ifPresent(found::add);
        found.sort(Comparator.comparing(WayOut::helps).reversed().thenComparingDouble(WayOut::hours));
        return found;
    }

    /** What is only told is told as the crew's tape has it. */
    private Length onTape(Length length) {
        return length.rounded(stair.brief().tape().graduation());
    }

    private Optional<Double> worst(StringerCase changed) {
        return basis.woods()
                .stringer(changed.board().breadth(), changed.board().depth())
                .then(wood -> new StringerChecks(basis, changed, wood).worst())
                .match(Optional::of, because -> Optional.empty());
    }

    /** As few more as are enough, or as many as there is any sense in. */
    private Optional<WayOut> moreStringers() {
        Optional<WayOut> best = Optional.empty();
        for (int more = 1; more <= MOST_MORE; more++) {
            int count = stringers().count() + more;
            Stringers closer = new Stringers(
                    stringers().stock(),
                    count,
                    stringers().treadOverhang(),
                    stringers().trim());
            StringerSpacing across = new StringerSpacing(stair.brief().width(), closer);
            if (!across.clear().isPositive()) {
                break;
            }
            double hours = more * HOURS_PER_STRINGER;
            best = worst(it.taking(StringerCase.takesMost(across)))
                    .map(ratio -> new WayOut(
                            Phrase.of("use {} stringers", new Count(count)),
                            Phrase.of("they then stand {} apart, middle to middle", onTape(across.spacing())),
                            ratio,
                            hours));
            if (best.filter(WayOut::helps).isPresent()) {
                return best;
            }
        }
        return best;
    }

    /** Under the riser cut nearest the middle. */
    private Optional<WayOut> support() {
        int steps = stair.treads();
        if (steps < 2 || it.supported().isPresent()) {
            return Optional.empty();
        }
        Length x = stair.run().times((steps + 1) / 2);
        StringerCase supported = it.supportedAt(new TwoSpans(x, it.span().minus(x)));
        return worst(supported)
                .map(ratio -> new WayOut(
                        Phrase.of("support every stringer from below, {} level from the first riser cut", x),
                        Phrase.of(
                                "each post bears {} and stands on its own footing; over it the cut edge is in tension,"
                                        + " so let an engineer see it, or cut the stringers through there",
                                basis.units().show(new StringerReactions(basis, supported).support())),
                        ratio,
                        HOURS_FOR_SUPPORT));
    }

    /** A whole board beside the throat, fastened so that both bend alike: they share by stiffness. */
    private Optional<WayOut> strongback(int sides) {
        Optional<StringerStock> back =
                Stock.strongbackWithin(it.bends().depth(), it.board().breadth(), basis);
        return back.flatMap(board -> {
            double share = board.depth().approxMm() / it.bends().depthMm();
            double breadth = it.bends().breadthMm() + sides * board.thickness().approxMm() * share * share * share;
            Section both = new Section(Units.near(breadth), it.bends().depth());
            return worst(it.bending(both))
                    .map(ratio -> new WayOut(
                            Phrase.of("sister a whole " + board.name() + " along "
                                    + (sides == 1 ? "one side" : "both sides") + " of every stringer, under the cuts"),
                            Phrase.of("of the same wood, from end to end, with two rows of structural screws or bolts"),
                            ratio,
                            sides * stringers().count() * HOURS_PER_STRONGBACK));
        });
    }

    private Optional<WayOut> deeper() {
        return Stock.deeperThan(it.board().depth(), basis).stream()
                .flatMap(stock -> deeper(stock).stream())
                .reduce((one, other) -> one.helps() ? one : other);
    }

    private Optional<WayOut> deeper(StringerStock stock) {
        Length more = stock.depth().minus(it.board().depth());
        StringerCase changed = new StringerCase(
                it.span(),
                it.pitch(),
                new Section(it.bends().breadth(), it.bends().depth().plus(more)),
                new Section(it.board().breadth(), stock.depth()),
                it.takes(),
                it.stands(),
                it.step(),
                it.cut(),
                it.supported());
        return worst(changed)
                .map(ratio -> new WayOut(
                        Phrase.of("cut the stringers from boards {} deep", stock.depth()),
                        Phrase.of(
                                "{} of wood is then left under a step",
                                onTape(changed.bends().depth())),
                        ratio,
                        stringers().count() * HOURS_PER_DEEPER));
    }

    private Optional<WayOut> solid() {
        return worst(it.solid())
                .map(ratio -> new WayOut(
                        Phrase.of("leave the stringers whole, and carry the treads on cleats"),
                        Phrase.of(
                                "the treads then span between the stringers' faces; the cleats need fasteners of their"
                                        + " own"),
                        ratio,
                        stringers().count() * HOURS_PER_SOLID + stair.treads() * HOURS_PER_CLEATED_TREAD));
    }

    /** The longest of the others that carries; else the one that comes nearest. */
    private Optional<WayOut> shorter(List<Stair> others) {
        Optional<WayOut> best = Optional.empty();
        for (Stair other : others) {
            if (other.flight().totalRun().isLessThan(stair.flight().totalRun())) {
                Optional<WayOut> way = worst(StringerCase.of(other)).map(ratio -> shorter(other, ratio));
                if (way.filter(WayOut::helps).isPresent()) {
                    return way;
                }
                best = better(best, way);
            }
        }
        return best;
    }

    private static Optional<WayOut> better(Optional<WayOut> one, Optional<WayOut> other) {
        return one.isEmpty()
                        || (other.isPresent() && other.get().ratio() < one.get().ratio())
                ? other
                : one;
    }

    private static WayOut shorter(Stair other, double ratio) {
        return new WayOut(
                Phrase.of("build it with a run of {}, in {} steps", other.run(), new Count(other.treads())),
                Phrase.of("the flight then reaches {} level", other.flight().totalRun()),
                ratio,
                HOURS_TO_LAY_OUT_ANEW);
    }
}
