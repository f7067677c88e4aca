package pitchboard.sheet.subject;

import java.util.List;
import java.util.Optional;
import pitchboard.carry.Carried;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.measure.TrueText;
import pitchboard.parts.Part;
import pitchboard.parts.PartId;
import pitchboard.parts.SideView;
import pitchboard.parts.StringerLayout;
import pitchboard.parts.Worksheet;
import pitchboard.rules.Finding;
import pitchboard.rules.Rulebook;
import pitchboard.stair.Stair;

/**
 * Everything the sheets are drawn from.
 *
 * @param fingerprint of the inputs, as printed
 */
public record Subject(
        Stair stair,
        List<Part> parts,
        List<Finding> findings,
        List<Worksheet.Section> worksheet,
        Carried carried,
        Rulebook rulebook,
        String fingerprint) {
    public Subject {
        parts = List.copyOf(parts);
        findings = List.copyOf(findings);
        worksheet = List.copyOf(worksheet);
    }

    public StringerLayout layout() {
        return StringerLayout.of(stair);
    }

    public SideView side() {
        return new SideView(stair);
    }

    public Tape tape() {
        return stair.brief().tape();
    }

    /** A size in the words of the crew's tape. */
    public String size(Length length) {
        return TapeWriter.write(length, tape(), Tape.Style.PRINTED);
    }

    /** A size on the tape; with a sign in front when the exact size lies between two lines. */
    public String near(Length length) {
        boolean exact = length.rounded(tape().graduation()).equals(length);
        return (exact ? "" : "≈ ") + size(length);
    }

    /** A position along a board in the words of the crew's tape. */
    public String running(Length length) {
        return TapeWriter.writeRunning(length, tape(), Tape.Style.PRINTED);
    }

    public String words(Quantity quantity) {
        return TrueText.write(quantity, tape(), Tape.Style.PRINTED);
    }

    public String words(Phrase phrase) {
        return phrase.write(tape(), Tape.Style.PRINTED);
    }

    /** The piece with this mark; empty when the stair has none. */
    public Optional<Part> findPart(PartId id) {
        return parts.stream().filter(part -> part.id().equals(id)).findFirst();
    }
}
