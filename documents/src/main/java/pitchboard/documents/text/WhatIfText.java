package pitchboard.documents.text;

import pitchboard.job.WhatIf;
import pitchboard.money.Money;

/** What other risers, runs, stringers and boards would cost, for a terminal. */
public final class WhatIfText {
    private WhatIfText() {}

    public static String write(WhatIf whatIf) {
        Lines out = new Lines();
        out.heading("What if? One thing changed at a time, cheapest first  (inputs "
                + whatIf.fingerprint().text() + ")");
        out.item("  ", whatIf.base().job().brief().title().job());
        out.item(
                "  ",
                "boards at " + whatIf.yard().name() + ", prices of "
                        + whatIf.yard().date() + ", without tax and delivery");
        for (WhatIf.Case each : whatIf.cases()) {
            out.heading(each.name());
            out.item("  boards    ", each.boards().map(Money::toString).orElse("no price for all") + difference(each));
            each.whole().ifPresent(whole -> out.item("  whole job ", whole.toString()));
            out.item("  rules     ", each.rules());
            out.item("  strength  ", each.strength());
            if (!each.because().isEmpty()) {
                out.item("  because   ", each.because());
            }
        }
        if (!whatIf.without().isEmpty()) {
            out.heading("No stair fits");
            whatIf.without().forEach(name -> out.item("  ", name));
        }
        return out.text();
    }

    private static String difference(WhatIf.Case each) {
        if (each.isAsItIs() || each.more().isEmpty()) {
            return "";
        }
        Money more = each.more().get();
        if (more.isZero()) {
            return ", the same as it is";
        }
        return more.isNegative()
                ? ", " + Money.none(more.currency()).minus(more).digits() + " less than as it is"
                : ", " + more.digits() + " more than as it is";
    }
}
