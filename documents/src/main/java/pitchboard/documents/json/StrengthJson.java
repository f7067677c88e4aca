package pitchboard.documents.json;

import java.util.List;
import java.util.Optional;
import pitchboard.carry.Carried;
import pitchboard.carry.MemberFinding;
import pitchboard.carry.MemberText;
import pitchboard.carry.SecondLook;
import pitchboard.carry.WayOut;
import pitchboard.measure.Tape;
import pitchboard.rules.Limit;
import pitchboard.strength.Factor;
import pitchboard.strength.Utilisation;

/** Whether it carries, with every factor. */
record StrengthJson(QuantityJson quantities) {
    private MemberText text() {
        return MemberText.on(quantities.tape(), Tape.Style.PLAIN);
    }

    Json of(Carried carried, Optional<SecondLook> look) {
        return Json.object()
                .says("method", carried.method())
                .with("failing", Json.truth(carried.hasFailures()))
                .with("assumptions", Json.list(carried.assumptions(), Json::words))
                .with(
                        "cautions",
                        Json.list(
                                carried.cautions(),
                                caution -> Json.object()
                                        .says("words", caution.text())
                                        .says("source", caution.source().citation())
                                        .says(
                                                "caution",
                                                caution.source().confidence().caution())))
                .with("findings", Json.list(carried.findings(), this::finding))
                .with("waysOut", Json.list(carried.waysOut(), this::wayOut))
                .with(
                        "treadSpacings",
                        Json.list(
                                carried.spacings(),
                                spacing -> Json.object()
                                        .says("board", spacing.board())
                                        .with("greatest", quantities.of(spacing.greatest()))
                                        .says("governedBy", spacing.governedBy())))
                .with("elements", look.<Json>map(this::elements).orElseGet(Json::none))
                .says("whoseWord", Carried.WHOSE_WORD);
    }

    private Json elements(SecondLook look) {
        return new ElementsJson(quantities, look.units()).of(finding(look.finding()), look.elements());
    }

    private Json finding(MemberFinding finding) {
        return Json.object()
                .says("check", finding.id())
                .says("topic", finding.topic().title())
                .says("subject", finding.subject())
                .says(
                        "verdict",
                        finding.verdict()
                                .match(
                                        pass -> "pass",
                                        fail -> "fail",
                                        not -> "does not apply",
                                        cannot -> "cannot tell"))
                .says("words", text().words(finding.words()))
                .with("ratio", finding.ratio().<Json>map(Json::number).orElseGet(Json::none))
                .with(
                        "measured",
                        finding.verdict()
                                .<Json>match(
                                        pass -> quantities.of(pass.measured()),
                                        fail -> quantities.of(fail.measured()),
                                        not -> Json.none(),
                                        cannot -> demand(finding)))
                .with(
                        "limit",
                        finding.verdict()
                                .<Json>match(
                                        pass -> limit(pass.limit()),
                                        fail -> limit(fail.limit()),
                                        not -> Json.none(),
                                        cannot -> capacity(finding)))
                .says("governing", finding.working().map(Utilisation::governing).orElse(""))
                .with(
                        "factors",
                        Json.list(finding.working().map(Utilisation::factors).orElseGet(List::of), this::factor))
                .says("say", text().next(finding))
                .says("source", finding.source().citation())
                .says("caution", finding.source().confidence().caution());
    }

    /** What was reckoned is told even where its verdict is open. */
    private Json demand(MemberFinding finding) {
        return finding.working()
                .<Json>map(working -> quantities.of(working.demand().value()))
                .orElseGet(Json::none);
    }

    private Json capacity(MemberFinding finding) {
        return finding.working()
                .<Json>map(working -> limit(Limit.atMost(working.capacity().value())))
                .orElseGet(Json::none);
    }

    private Json limit(Limit limit) {
        return Json.object().says("bound", limit.bound().words()).with("value", quantities.of(limit.value()));
    }

    private Json factor(Factor factor) {
        return Json.object()
                .says("symbol", factor.symbol())
                .says("name", factor.name())
                .with("value", Json.number(factor.value()))
                .with("applies", Json.truth(factor.applies()))
                .says("because", factor.because())
                .says("source", factor.source().citation())
                .says("caution", factor.source().confidence().caution());
    }

    private Json wayOut(WayOut way) {
        return Json.object()
                .says("what", text().words(way.what()))
                .says("then", text().words(way.then()))
                .with("helps", Json.truth(way.helps()))
                .with("ratio", Json.number(way.ratio()))
                .with("hours", Json.number(way.hours()));
    }
}
