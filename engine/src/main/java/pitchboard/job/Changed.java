package pitchboard.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.StringerStock;
import pitchboard.brief.Stringers;
import pitchboard.brief.Wishes;
import pitchboard.buying.need.Need;
import pitchboard.buying.order.Buyer;
import pitchboard.buying.order.StockOrder;
import pitchboard.buying.yard.Stock;
import pitchboard.buying.yard.Use;
import pitchboard.buying.yard.Yard;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;

/**
 * A job with one thing about it changed, or the yard it is bought from.
 *
 * @param name what was changed, in a few words
 */
record Changed(String name, Job job, Yard yard) {
    private static final int MORE_RISERS = 2;

    /** Every change worth asking about: risers, run, stringers one more and one fewer, and other stock of the yard. */
    static List<Changed> listAll(Outcome.Designed base, Yard yard, List<StockOrder> orders) {
        List<Changed> all = new ArrayList<>();
        all.addAll(risers(base, yard));
        all.addAll(runs(base, yard));
        all.addAll(stringers(base, yard));
        all.addAll(deeper(base, yard));
        orders.forEach(order -> all.addAll(stocks(base, yard, order, orders)));
        return all;
    }

    private static List<Changed> risers(Outcome.Designed base, Yard yard) {
        int now = base.stair().flight().risers();
        List<Changed> all = new ArrayList<>();
        for (int risers = Math.max(2, now - MORE_RISERS); risers <= now + MORE_RISERS; risers++) {
            if (risers != now) {
                Wishes old = base.job().brief().wishes();
                Wishes wishes = new Wishes(Optional.of(risers), old.run(), old.targetRise(), old.targetRun());
                all.add(new Changed(risers + " risers", wishing(base.job(), wishes), yard));
            }
        }
        return all;
    }

    /** Half an inch and an inch, or 10 and 20 mm, to either side, with as many risers as now. */
    private static List<Changed> runs(Outcome.Designed base, Yard yard) {
        Tape tape = base.job().brief().tape();
        Length step = tape.isInches() ? Length.inches(1).dividedBy(2) : Length.mm(10);
        Wishes old = base.job().brief().wishes();
        List<Changed> all = new ArrayList<>();
        for (int steps : List.of(-2, -1, 1, 2)) {
            Length run = base.stair().run().plus(step.times(steps));
            if (run.isPositive()) {
                Optional<Integer> risers = Optional.of(base.stair().flight().risers());
                Wishes wishes = new Wishes(risers, Optional.of(run), old.targetRise(), old.targetRun());
                String name = "run " + TapeWriter.write(run, tape, Tape.Style.PLAIN);
                all.add(new Changed(name, wishing(base.job(), wishes), yard));
            }
        }
        return all;
    }

    private static List<Changed> stringers(Outcome.Designed base, Yard yard) {
        Stringers old = base.job().brief().stringers();
        List<Changed> all = new ArrayList<>();
        for (int count : List.of(old.count() - 1, old.count() + 1)) {
            if (count >= 2) {
                Stringers other = new Stringers(old.stock(), count, old.treadOverhang(), old.trim());
                all.add(new Changed(count + " stringers", with(settled(base), other), yard));
            }
        }
        return all;
    }

    /** Stringers from what the yard sells as thick, but wider or narrower. */
    private static List<Changed> deeper(Outcome.Designed base, Yard yard) {
        Stringers old = base.job().brief().stringers();
        List<Changed> all = new ArrayList<>();
        for (Stock stock : yard.stocks()) {
            Length thin = Length.min(stock.thickness(), stock.width());
            Length wide = Length.max(stock.thickness(), stock.width());
            boolean serves = stock.uses().isEmpty() || stock.uses().contains(Use.STRINGERS);
            if (serves
                    && thin.equals(old.stock().thickness())
                    && !wide.equals(old.stock().depth())) {
                StringerStock other = new StringerStock(stock.name(), wide, thin);
                Stringers changed = new Stringers(other, old.count(), old.treadOverhang(), old.trim());
                all.add(new Changed("stringers from " + stock.name(), with(settled(base), changed), yard));
            }
        }
        return all;
    }

    /** The same pieces from another stock that yields them all: another wood, grade or width. */
    private static List<Changed> stocks(Outcome.Designed base, Yard yard, StockOrder order, List<StockOrder> orders) {
        List<Changed> all = new ArrayList<>();
        for (Stock stock : yard.stocks()) {
            List<Stock> before = before(stock, yard, order.needs());
            boolean others = orders.stream().anyMatch(each -> !each.equals(order) && before.contains(each.stock()));
            if (before.contains(order.stock()) && !others && yieldsAll(stock, order.needs())) {
                String wood = stock.wood().words();
                String name = stock.name() + (wood.isEmpty() ? "" : ", " + wood + ",") + " instead of "
                        + order.stock().name();
                all.add(new Changed(name, settled(base), without(yard, before)));
            }
        }
        return all;
    }

    private static boolean yieldsAll(Stock stock, List<Need> needs) {
        return needs.stream().allMatch(need -> stock.yields(need.use(), need.thickness(), need.width()));
    }

    /** What the pieces would come from sooner than from this stock. */
    private static List<Stock> before(Stock stock, Yard yard, List<Need> needs) {
        List<Stock> before = new ArrayList<>();
        List<Stock> sorted = yard.stocks().stream()
                .filter(each -> yieldsAll(each, needs))
                .sorted(Buyer.FIRST)
                .toList();
        for (Stock each : sorted) {
            if (each.equals(stock)) {
                return before;
            }
            before.add(each);
        }
        return List.of();
    }

    private static Yard without(Yard yard, List<Stock> gone) {
        List<Stock> stocks =
                yard.stocks().stream().filter(each -> !gone.contains(each)).toList();
        List<String> names = stocks.stream().map(Stock::name).toList();
        return new Yard(
                yard.name(),
                yard.givenBy(),
                yard.date(),
                yard.currency(),
                yard.units(),
                yard.saw(),
                yard.splicing(),
                stocks,
                yard.rack().stream()
                        .filter(piece -> names.contains(piece.stock()))
                        .toList());
    }

    /** With risers and run as they came out, so that nothing else changes. */
    private static Job settled(Outcome.Designed base) {
        Wishes old = base.job().brief().wishes();
        return wishing(
                base.job(),
                new Wishes(
                        Optional.of(base.stair().flight().risers()),
                        Optional.of(base.stair().run()),
                        old.targetRise(),
                        old.targetRun()));
    }

    private static Job wishing(Job job, Wishes wishes) {
        Brief b = job.brief();
        return with(job, b, b.stringers(), wishes);
    }

    private static Job with(Job job, Stringers stringers) {
        return with(job, job.brief(), stringers, job.brief().wishes());
    }

    private static Job with(Job job, Brief b, Stringers stringers, Wishes wishes) {
        Brief brief = new Brief(
                b.title(),
                b.headJoin(),
                b.headFixing(),
                b.foot(),
                b.width(),
                b.clearWidth(),
                b.treads(),
                b.risers(),
                b.nosing(),
                stringers,
                b.handrail(),
                b.guard(),
                wishes,
                b.use(),
                b.support(),
                b.joints(),
                b.strength(),
                b.tape(),
                b.paper());
        return new Job(job.site(), brief, job.rulebook(), job.fingerprint());
    }
}
