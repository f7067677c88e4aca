package pitchboard.documents.json;

import java.util.Optional;
import pitchboard.job.WhatIf;
import pitchboard.money.Money;

/** What other risers, runs, stringers and boards would cost. Amounts are text. */
public final class WhatIfJson {
    private WhatIfJson() {}

    public static String write(WhatIf whatIf) {
        return Json.object()
                .says("inputs", whatIf.fingerprint().text())
                .says("job", whatIf.base().job().brief().title().job())
                .says("yard", whatIf.yard().name())
                .says("pricesOf", whatIf.yard().date().toString())
                .says("currency", whatIf.yard().currency().code())
                .with("cases", Json.list(whatIf.cases(), WhatIfJson::one))
                .with("noStairFits", Json.list(whatIf.without(), Json::words))
                .text();
    }

    private static Json one(WhatIf.Case each) {
        return Json.object()
                .says("changed", each.name())
                .with("asItIs", Json.truth(each.isAsItIs()))
                .with("boards", money(each.boards()))
                .with("more", money(each.more()))
                .with("wholeJob", money(each.whole()))
                .says("rules", each.rules())
                .says("strength", each.strength())
                .with("failures", Json.list(each.failures(), Json::words))
                .says("because", each.because());
    }

    private static Json money(Optional<Money> money) {
        return money.map(Money::digits).map(Json::words).orElseGet(Json::none);
    }
}
