package pitchboard.documents.csv;

import java.util.Optional;
import pitchboard.job.WhatIf;
import pitchboard.money.Money;

/** What other risers, runs, stringers and boards would cost: a row for each, cheapest first. */
public final class WhatIfCsv {
    private WhatIfCsv() {}

    public static String write(WhatIf whatIf) {
        String currency = whatIf.yard().currency().code();
        Csv csv = new Csv()
                .row(
                        "changed",
                        "boards " + currency,
                        "more " + currency,
                        "whole job " + currency,
                        "rules",
                        "strength",
                        "because");
        for (WhatIf.Case each : whatIf.cases()) {
            csv.row(
                    each.name(),
                    money(each.boards()),
                    money(each.more()),
                    money(each.whole()),
                    each.rules(),
                    each.strength(),
                    each.because());
        }
        whatIf.without().forEach(name -> csv.row(name, "", "", "", "no stair fits", "", ""));
        return csv.text();
    }

    private static String money(Optional<Money> money) {
        return money.map(Money::digits).orElse("");
    }
}
