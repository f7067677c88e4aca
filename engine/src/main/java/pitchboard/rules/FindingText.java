package pitchboard.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.measure.Decimals;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.measure.TrueText;
import pitchboard.source.Clause;

/** The words of a finding: the one place where they are put together. */
public final class FindingText {
    private final Tape tape;
    private final Tape.Style style;

    private FindingText(Tape tape, Tape.Style style) {
        this.tape = tape;
        this.style = style;
    }

    public static FindingText on(Tape tape, Tape.Style style) {
        return new FindingText(tape, style);
    }

    /** Everything in one line: {@code rise of a step: 7 1/2", at most 7 3/4" [IRC 2021 R311.7.5.1]}. */
    public String line(Finding finding) {
        return finding.rule().subject() + ": " + verdict(finding.verdict()) + " [" + source(finding) + "]";
    }

    /** What was found, without what was looked at and who says so. */
    public String verdict(Verdict verdict) {
        return verdict.match(
                this::pass,
                this::fail,
                none -> "does not apply: " + none.because().write(tape, style),
                unknown -> "cannot tell: " + unknown.missing().write(tape, style));
    }

    /** The limit as words: {@code at most 7 3/4"}. */
    public String bound(Limit limit) {
        return limit.value() instanceof Found
                ? Found.RIGHT.words()
                : limit.bound().words() + " " + text(limit.value());
    }

    /** The clause, what to beware of in it, and local changes. */
    public String source(Finding finding) {
        Clause clause = finding.rule().clause();
        List<String> parts = new ArrayList<>(List.of(clause.citation()));
        boolean ownWords = finding.changes().isEmpty();
        if (ownWords && !clause.confidence().caution().isEmpty()) {
            parts.add(clause.confidence().caution());
        }
        finding.changes().forEach(change -> parts.add(change(change)));
        return String.join("; ", parts);
    }

    /** Who changed it, since when and why, and what the book has: so that an inspector can look it up. */
    public String change(Change change) {
        Amendment by = change.amendment();
        StringBuilder text = new StringBuilder(change.lifts() ? "lifted by " : "changed by ");
        text.append(by.saidBy());
        text.append(by.since().isBlank() ? "" : " since " + by.since());
        text.append(by.why().isBlank() ? "" : " (" + by.why() + ")");
        change.printed()
                .ifPresent(limit -> text.append(", the book has ")
                        .append(bound(limit))
                        .append(" for ")
                        .append(change.what()));
        return text.toString();
    }

    private String pass(Verdict.Pass pass) {
        String measured = apart(pass.measured(), pass.limit());
        return pass.measured() instanceof Found ? measured : measured + ", " + bound(pass.limit());
    }

    private String fail(Verdict.Fail fail) {
        String by = difference(fail.measured(), fail.limit()).orElse("");
        return apart(fail.measured(), fail.limit()) + " (" + fail.where().words() + "), must be " + bound(fail.limit())
                + by + "; " + fail.remedy().write(tape, style);
    }

    private Optional<String> difference(Quantity measured, Limit limit) {
        String side = limit.bound().isFromBelow() ? " too little" : " too much";
        return gap(measured, limit.value())
                .map(gap -> isNothing(gap) ? ", and is just that" : ", " + apart(gap, nothing(gap)) + side);
    }

    private static Optional<Quantity> gap(Quantity measured, Quantity value) {
        if (measured instanceof Length a && value instanceof Length b) {
            return Optional.of(a.minus(b).abs());
        }
        if (measured instanceof Count a && value instanceof Count b) {
            return Optional.of(new Count(Math.abs(a.value() - b.value())));
        }
        if (measured instanceof Pitch a && value instanceof Angle b) {
            Ratio degrees = Decimals.ratio(a.degrees(), 6);
            return Optional.of(new Angle(degrees.minus(b.degrees()).abs()));
        }
        return Optional.empty();
    }

    private static boolean isNothing(Quantity gap) {
        return gap.equals(nothing(gap));
    }

    private static Quantity nothing(Quantity like) {
        if (like instanceof Length) {
            return Length.ZERO;
        }
        return like instanceof Count ? new Count(0) : Angle.degrees(0);
    }

    private String apart(Quantity measured, Limit limit) {
        return apart(measured, limit.value());
    }

    private String apart(Quantity measured, Quantity from) {
        return TrueText.writeApart(measured, from, tape, style);
    }

    private String text(Quantity quantity) {
        return TrueText.write(quantity, tape, style);
    }
}
