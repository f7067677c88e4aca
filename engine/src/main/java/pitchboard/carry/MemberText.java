package pitchboard.carry;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Decimals;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.measure.Tape;
import pitchboard.measure.TrueText;
import pitchboard.rules.FindingText;
import pitchboard.strength.Factor;
import pitchboard.strength.Utilisation;

/** The words of what was found about strength: the one place where they are put together. */
public final class MemberText {
    private final Tape tape;
    private final Tape.Style style;

    private MemberText(Tape tape, Tape.Style style) {
        this.tape = tape;
        this.style = style;
    }

    public static MemberText on(Tape tape, Tape.Style style) {
        return new MemberText(tape, style);
    }

    /** Everything in one line, plain words first. */
    public String line(MemberFinding finding) {
        StringBuilder line = new StringBuilder(words(finding.words()));
        numbers(finding).ifPresent(numbers -> line.append(": ").append(numbers));
        String next = next(finding);
        if (!next.isEmpty() && !next.equals(words(finding.words()))) {
            line.append("; ").append(next);
        }
        return line.append(" [").append(source(finding)).append("]").toString();
    }

    /** What it is and what it may be; empty where nothing was measured. */
    public Optional<String> numbers(MemberFinding finding) {
        FindingText rules = FindingText.on(tape, style);
        return finding.working()
                .map(working -> text(working.demand().value()) + ", at most "
                        + text(working.capacity().value()))
                .or(() -> finding.verdict()
                        .match(
                                pass -> Optional.of(text(pass.measured()) + ", " + rules.bound(pass.limit())),
                                fail -> Optional.of(text(fail.measured()) + ", must be " + rules.bound(fail.limit())),
                                not -> Optional.empty(),
                                cannot -> Optional.empty()));
    }

    /** What to do, to say or to ask, or why it does not apply; empty where it passes. */
    public String next(MemberFinding finding) {
        return finding.verdict()
                .match(
                        pass -> "",
                        fail -> words(fail.remedy()),
                        not -> words(not.because()),
                        cannot -> words(cannot.missing()));
    }

    public String source(MemberFinding finding) {
        String caution = finding.source().confidence().caution();
        return finding.source().citation() + (caution.isEmpty() ? "" : "; " + caution);
    }

    /** The factors that change something, such as {@code CF 1.2}; {@code none} where none does. */
    public String applied(Utilisation working) {
        List<String> applied = working.factors().stream()
                .filter(Factor::applies)
                .map(factor -> factor.symbol() + " " + Decimals.trimmed(factor.value(), 3))
                .toList();
        return applied.isEmpty() ? "none" : String.join(", ", applied);
    }

    /** Such as {@code CF 1.2, size: for a 2x8 of this grade}. */
    public String factor(Factor factor) {
        return factor.symbol() + " " + Decimals.trimmed(factor.value(), 3) + ", " + factor.name() + ": "
                + factor.because();
    }

    public String words(Phrase phrase) {
        return phrase.write(tape, style);
    }

    private String text(Quantity quantity) {
        return TrueText.write(quantity, tape, style);
    }
}
