package pitchboard.app;

import java.util.Optional;
import pitchboard.carry.SecondLook;
import pitchboard.documents.json.ComparisonJson;
import pitchboard.documents.json.OutcomeJson;
import pitchboard.documents.text.ChoicesText;
import pitchboard.documents.text.ComparisonText;
import pitchboard.documents.text.OutcomeText;
import pitchboard.job.Comparison;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;

/** What came of a job, to be read: by people as text, by programs as JSON. */
public final class Reports {
    private Reports() {}

    /** Which stairs are possible, and why others are not. */
    public static String choices(Outcome outcome) {
        return ChoicesText.write(outcome);
    }

    /**
     * The stair, its findings, pieces and marks.
     *
     * @param elements whether the stringers are looked at by finite elements, too
     */
    public static String text(Outcome outcome, boolean elements) {
        return OutcomeText.write(outcome, look(outcome, elements));
    }

    private static Optional<SecondLook> look(Outcome outcome, boolean elements) {
        return outcome.match(
                designed -> elements ? Optional.of(Pipeline.secondLook(designed)) : Optional.empty(),
                none -> Optional.empty());
    }

    /** One job under several rulebooks side by side. */
    public static String text(Comparison comparison) {
        return ComparisonText.write(comparison);
    }

    /** The fields are explained in docs/json.md. */
    public static String json(Comparison comparison) {
        return ComparisonJson.write(comparison) + "\n";
    }

    /** The fields are explained in docs/json.md. */
    public static String json(Outcome outcome, boolean elements) {
        return OutcomeJson.write(outcome, look(outcome, elements)) + "\n";
    }
}
