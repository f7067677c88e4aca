package pitchboard.documents.json;

import java.util.List;
import pitchboard.intake.Asking;
import pitchboard.measure.Phrase;
import pitchboard.measure.Tape;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.source.Clause;

/** Findings, worst first. */
record FindingsJson(QuantityJson quantities) {
    Json of(List<Finding> findings) {
        return Json.list(findings, this::finding);
    }

    private Json finding(Finding finding) {
        Verdict verdict = finding.verdict();
        Clause clause = finding.rule().clause();
        return Json.object()
                .says("rule", finding.rule().id())
                .says("subject", finding.rule().subject())
                .says(
                        "verdict",
                        verdict.match(pass -> "pass", fail -> "fail", not -> "does not apply", cannot -> "cannot tell"))
                .with(
                        "measured",
                        verdict.<Json>match(
                                pass -> quantities.of(pass.measured()),
                                fail -> quantities.of(fail.measured()),
                                not -> Json.none(),
                                cannot -> Json.none()))
                .with(
                        "limit",
                        verdict.<Json>match(
                                pass -> limit(pass.limit()),
                                fail -> limit(fail.limit()),
                                not -> Json.none(),
                                cannot -> finding.rule()
                                        .limit()
                                        .<Json>map(this::limit)
                                        .orElseGet(Json::none)))
                .says("place", verdict.match(pass -> "", fail -> fail.where().words(), not -> "", cannot -> ""))
                .says(
                        "say",
                        verdict.match(
                                pass -> "",
                                fail -> words(fail.remedy()),
                                not -> words(not.because()),
                                cannot -> words(cannot.missing())))
                .with(
                        "ask",
                        verdict.<Json>match(pass -> Json.none(), fail -> Json.none(), not -> Json.none(), this::ask))
                .says("edition", clause.edition().shortName())
                .says("clause", clause.locus())
                .says("caution", clause.confidence().caution())
                .with("localChanges", Json.list(finding.changes(), change -> Json.words(text().change(change))));
    }

    private Json ask(Verdict.CannotTell verdict) {
        return verdict.unknown()
                .<Json>map(unknown -> Json.words(Asking.field(unknown)))
                .orElseGet(Json::none);
    }

    private FindingText text() {
        return FindingText.on(quantities.tape(), Tape.Style.PLAIN);
    }

    private String words(Phrase phrase) {
        return phrase.write(quantities.tape(), Tape.Style.PLAIN);
    }

    private Json limit(Limit limit) {
        return Json.object().says("bound", limit.bound().words()).with("value", quantities.of(limit.value()));
    }
}
