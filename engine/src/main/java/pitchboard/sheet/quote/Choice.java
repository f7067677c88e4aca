package pitchboard.sheet.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.costing.Costing;
import pitchboard.costing.Payment;
import pitchboard.costing.Price;
import pitchboard.costing.Scope;
import pitchboard.measure.Tape;
import pitchboard.money.Money;

/**
 * Several ways of doing one job, side by side.
 *
 * @param fingerprint of everything that went into them
 */
public record Choice(
        String name, Title title, Paper paper, String rulebook, String fingerprint, List<Choice.Way> ways) {
    public Choice {
        ways = List.copyOf(ways);
    }

    /**
     * One way.
     *
     * @param says what speaks for it; may be empty
     * @param although why it is offered in spite of what fails
     * @param offer empty when no stair fits
     * @param rules how the rules stand, in a few words
     * @param strength whether it carries, in a few words
     * @param failures all that fails
     * @param whyNot why the customer does not get to see it; empty when he does
     */
    public record Way(
            String name,
            String says,
            Optional<String> although,
            Optional<Offer> offer,
            String rules,
            String strength,
            List<String> failures,
            Optional<String> whyNot) {
        public Way {
            failures = List.copyOf(failures);
        }

        public boolean isOffered() {
            return whyNot.isEmpty();
        }

        public Optional<Price> price() {
            return offer.flatMap(each -> each.costing().price());
        }

        List<Scope.Item> scope(Tape.Style style) {
            return offer.map(each -> Scope.of(
                            each.stairs().get(0).stair(), each.stairs().get(0).parts(), style))
                    .orElse(List.of());
        }
    }

    /** @param cells one for each way that is offered */
    public record Line(String topic, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }

        boolean isSameInAll() {
            return cells.stream().distinct().count() == 1;
        }
    }

    public List<Way> offered() {
        return ways.stream().filter(Way::isOffered).toList();
    }

    /** What is built in the ways that are offered, topic by topic, where they differ. */
    public List<Line> different(Tape.Style style) {
        return scope(style).stream().filter(line -> !line.isSameInAll()).toList();
    }

    /** The same where they do not. */
    public List<Line> same(Tape.Style style) {
        return scope(style).stream().filter(Line::isSameInAll).toList();
    }

    private List<Line> scope(Tape.Style style) {
        List<List<Scope.Item>> all =
                offered().stream().map(way -> way.scope(style)).toList();
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < all.get(0).size(); i++) {
            int topic = i;
            lines.add(new Line(
                    all.get(0).get(i).topic(),
                    all.stream().map(scope -> scope.get(topic).words()).toList()));
        }
        return lines;
    }

    /** The price of each way that is offered, how much more or less than the first it is, and when it is due. */
    public List<Line> prices() {
        List<Price> prices =
                offered().stream().map(way -> way.price().orElseThrow()).toList();
        Money first = prices.get(0).total();
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(
                "price in " + first.currency().code(),
                prices.stream().map(price -> price.total().digits()).toList()));
        if (prices.size() > 1) {
            lines.add(new Line(
                    "beside the first",
                    prices.stream().map(price -> beside(first, price.total())).toList()));
        }
        List<Payment> payments = prices.get(0).payments();
        for (int i = 0; i < payments.size(); i++) {
            int payment = i;
            lines.add(new Line(
                    "due " + payments.get(i).when(),
                    prices.stream()
                            .map(price -> price.payments().get(payment).amount().digits())
                            .toList()));
        }
        return lines;
    }

    private static String beside(Money first, Money other) {
        Money more = other.minus(first);
        if (more.isZero()) {
            return "the same";
        }
        return more.isNegative() ? first.minus(other).digits() + " less" : more.digits() + " more";
    }

    /** What all ways have alike: rates, day, terms; empty when no stair fits in any of them. */
    Optional<Costing> findCosting() {
        return ways.stream()
                .flatMap(way -> way.offer().stream())
                .map(Offer::costing)
                .findFirst();
    }
}
