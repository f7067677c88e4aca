package pitchboard.documents.text;

import java.util.List;
import pitchboard.job.Comparison;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.Verdict;
import pitchboard.stair.Option;
import pitchboard.stair.Stair;

/** One job under several rulebooks, for a terminal. */
public final class ComparisonText {
    private static final int MOST_SHOWN = 3;

    private final Comparison comparison;
    private final Tape tape;
    private final Lines lines = new Lines();

    private ComparisonText(Comparison comparison) {
        this.comparison = comparison;
        this.tape = comparison.job().brief().tape();
    }

    public static String write(Comparison comparison) {
        return new ComparisonText(comparison).whole();
    }

    private String whole() {
        lines.heading(comparison.job().brief().title().job() + "  (inputs "
                + comparison.job().fingerprint().text() + ")");
        comparison
                .stair()
                .ifPresentOrElse(
                        this::stair,
                        () -> lines.item(
                                "  ",
                                "no stair fits under "
                                        + comparison.job().rulebook().name() + ": `choices` says why"));
        comparison.columns().forEach(this::failures);
        together();
        return lines.text();
    }

    private void stair(Stair stair) {
        lines.item(
                "  ",
                stair.flight().risers() + " risers of " + TapeWriter.write(stair.rise(), tape, Tape.Style.PLAIN)
                        + " with a run of " + TapeWriter.write(stair.run(), tape, Tape.Style.PLAIN));
        lines.heading(Lines.padded("Rulebook", 36)
                + Lines.right("fail", 6)
                + Lines.right("open", 6)
                + Lines.right("pass", 6)
                + Lines.right("n/a", 6));
        for (Comparison.Column column : comparison.columns()) {
            List<Finding> findings = column.findings();
            lines.item(
                    Lines.padded(column.book().name(), 36),
                    Lines.right(count(findings, Verdict.Fail.class), 6)
                            + Lines.right(count(findings, Verdict.CannotTell.class), 6)
                            + Lines.right(count(findings, Verdict.Pass.class), 6)
                            + Lines.right(count(findings, Verdict.DoesNotApply.class), 6));
        }
    }

    private static String count(List<Finding> findings, Class<? extends Verdict> kind) {
        return String.valueOf(findings.stream()
                .filter(finding -> kind.isInstance(finding.verdict()))
                .count());
    }

    private void failures(Comparison.Column column) {
        if (!column.failures().isEmpty()) {
            lines.heading("Fails under " + column.book().name());
            FindingText text = FindingText.on(tape, Tape.Style.PLAIN);
            column.failures().forEach(finding -> lines.item("  FAIL  ", text.line(finding)));
        }
    }

    private void together() {
        OptionText text = new OptionText(tape, lines);
        List<Option> best = comparison.together().bestOfEachCount();
        if (best.isEmpty()) {
            lines.heading("No choice of risers and run fits under all of them; nearest");
            comparison.together().nearMisses().stream().limit(MOST_SHOWN).forEach(option -> {
                lines.item("  ", text.sizes(option));
                text.objections(option);
            });
        } else {
            lines.heading("Risers and run that fit under all of them");
            best.stream().limit(MOST_SHOWN).forEach(text::option);
        }
    }
}
