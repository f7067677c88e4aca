package pitchboard.documents.text;

import java.util.List;
import java.util.Optional;
import pitchboard.carry.SecondLook;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.measure.ExactText;
import pitchboard.measure.Length;
import pitchboard.measure.QuantityText;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.parts.Part;
import pitchboard.parts.StoryPole;
import pitchboard.parts.StringerLayout;
import pitchboard.railing.EdgeLayout;
import pitchboard.railing.GuardLayout;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.Verdict;
import pitchboard.stair.Stair;

/** The stair and what the rules say of it; or why none fits. */
public final class OutcomeText {
    private final Job job;
    private final Tape tape;
    private final Lines lines = new Lines();

    private OutcomeText(Job job) {
        this.job = job;
        this.tape = job.brief().tape();
    }

    /** @param look what finite elements say, where they were asked for */
    public static String write(Outcome outcome, Optional<SecondLook> look) {
        return outcome.match(
                designed -> new OutcomeText(outcome.job()).designed(designed, look),
                none -> ChoicesText.write(outcome));
    }

    private String designed(Outcome.Designed designed, Optional<SecondLook> look) {
        Stair stair = designed.stair();
        lines.heading(
                job.brief().title().job() + "  (inputs " + job.fingerprint().text() + ")");
        figures(stair);
        instead(designed);
        findings(designed.findings());
        new StrengthText(tape, lines).write(designed.carried(), look);
        pieces(designed.parts());
        marks(stair);
        return lines.text();
    }

    private void figures(Stair stair) {
        StringerLayout layout = StringerLayout.of(stair);
        lines.heading("The stair")
                .entry("total rise", size(stair.flight().totalRise()))
                .entry("risers", stair.flight().risers() + " at " + both(stair.rise()))
                .entry("treads", stair.treads() + " with a run of " + both(stair.run()))
                .entry("total run", size(stair.flight().totalRun()))
                .entry("pitch", QuantityText.write(stair.pitch(), tape, Tape.Style.PLAIN))
                .entry("space taken", size(stair.spaceTaken()) + ", header to first nosing")
                .entry("first cut", both(stair.firstCut()) + ", from the seat to the first level cut")
                .entry("throat", both(layout.shape().throat()) + ", square to the edge")
                .entry("board for a stringer", size(layout.boardNeeded()) + " at least")
                .entry("spread of rises as marked", size(StoryPole.of(stair).spread()));
    }

    private String size(Length length) {
        return TapeWriter.write(length, tape, Tape.Style.PLAIN);
    }

    /** On the tape and, where that is not all of it, exactly. */
    private String both(Length length) {
        boolean onTape = length.rounded(tape.graduation()).equals(length);
        return onTape ? size(length) : size(length) + " (" + ExactText.write(length, tape.units()) + ")";
    }

    /** What was fixed is built even when it fails; then it is said what would pass. */
    private void instead(Outcome.Designed designed) {
        if (designed.choices().allowed().isEmpty()) {
            lines.heading("What was asked for is not allowed");
            new OptionText(tape, lines).objections(designed.choices().chosen().orElseThrow());
            if (!designed.choices().otherwiseAllowed().isEmpty()) {
                lines.heading("This would be");
                designed.choices().otherwiseAllowed().stream()
                        .limit(3)
                        .forEach(option -> new OptionText(tape, lines).option(option));
            }
        }
    }

    private void findings(List<Finding> findings) {
        lines.heading("Under " + job.rulebook().name() + ": " + count(findings, Verdict.Fail.class) + " fail, "
                + count(findings, Verdict.CannotTell.class) + " cannot be told yet, "
                + count(findings, Verdict.Pass.class) + " pass, "
                + count(findings, Verdict.DoesNotApply.class) + " do not apply");
        FindingText text = FindingText.on(tape, Tape.Style.PLAIN);
        for (Finding finding : findings) {
            lines.item(
                    finding.verdict()
                            .match(pass -> "  pass  ", fail -> "  FAIL  ", not -> "  -     ", cannot -> "  ?     "),
                    text.line(finding));
        }
    }

    private static long count(List<Finding> findings, Class<? extends Verdict> kind) {
        return findings.stream()
                .filter(finding -> kind.isInstance(finding.verdict()))
                .count();
    }

    private void pieces(List<Part> parts) {
        lines.heading("Pieces");
        for (Part part : parts) {
            lines.item(
                    "  " + Lines.padded(part.id().mark(), 4) + Lines.right(String.valueOf(part.count()), 3) + "  ",
                    part.name() + ", " + size(part.thickness()) + " x " + size(part.width()) + " x "
                            + size(part.length()) + ": " + part.purpose());
        }
    }

    private void marks(Stair stair) {
        lines.heading("Corners on the stringer's edge, from the datum");
        StringerLayout.of(stair)
                .marks()
                .forEach(mark -> lines.item(
                        "  " + Lines.right(String.valueOf(mark.step()), 3) + "  ",
                        TapeWriter.writeRunning(mark.at().line(), tape, Tape.Style.PLAIN)));
        GuardLayout.find(stair).ifPresent(guard -> new GuardText(tape, lines).marks(guard));
        EdgeLayout.find(stair).forEach(edge -> new GuardText(tape, lines).edge(edge));
    }
}
