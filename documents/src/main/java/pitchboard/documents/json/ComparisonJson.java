package pitchboard.documents.json;

import pitchboard.job.Comparison;

/** One job under several rulebooks, for other programs. */
public final class ComparisonJson {
    private ComparisonJson() {}

    public static String write(Comparison comparison) {
        return of(comparison).text();
    }

    public static Json of(Comparison comparison) {
        QuantityJson quantities = new QuantityJson(comparison.job().brief().tape());
        return Json.object()
                .says("job", comparison.job().brief().title().job())
                .says("inputs", comparison.job().fingerprint().text())
                .with(
                        "stair",
                        comparison
                                .stair()
                                .<Json>map(new StairJson(quantities)::stair)
                                .orElseGet(Json::none))
                .with(
                        "books",
                        Json.list(
                                comparison.columns(),
                                column -> Json.object()
                                        .says("rulebook", column.book().name())
                                        .with("findings", new FindingsJson(quantities).of(column.findings()))))
                .with("together", new ChoicesJson(quantities).of(comparison.together()));
    }
}
