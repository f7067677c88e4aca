package pitchboard.documents.text;

import java.util.Optional;
import pitchboard.carry.Carried;
import pitchboard.carry.MemberFinding;
import pitchboard.carry.MemberText;
import pitchboard.carry.SecondLook;
import pitchboard.carry.WayOut;
import pitchboard.carry.members.TreadSpacing;
import pitchboard.measure.Decimals;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;

/** Whether it carries, and what would make it. */
record StrengthText(Tape tape, Lines lines) {
    private MemberText text() {
        return MemberText.on(tape, Tape.Style.PLAIN);
    }

    void write(Carried carried, Optional<SecondLook> look) {
        lines.heading("Will it carry? By " + carried.method());
        for (MemberFinding.Topic topic : MemberFinding.Topic.values()) {
            carried.findings().stream()
                    .filter(finding -> finding.topic() == topic)
                    .forEach(this::finding);
        }
        look.ifPresent(this::elements);
        waysOut(carried);
        spacings(carried);
        lines.heading("What the strength rests on");
        carried.assumptions().forEach(words -> lines.item("  ", words));
        carried.cautions().forEach(caution -> lines.item("  ", caution.words()));
        lines.item("  ", Carried.WHOSE_WORD);
    }

    private void finding(MemberFinding finding) {
        lines.item(
                finding.verdict()
                        .match(pass -> "  pass  ", fail -> "  FAIL  ", not -> "  -     ", cannot -> "  ?     "),
                text().line(finding));
    }

    /** The finding, and what it rests on. */
    private void elements(SecondLook look) {
        finding(look.finding());
        look.elements().match(found -> new ElementsText(tape, look.units(), lines).write(found), because -> lines);
    }

    private void waysOut(Carried carried) {
        if (carried.waysOut().isEmpty()) {
            return;
        }
        lines.heading("What would make the stringers carry, least work first");
        carried.waysOut().forEach(this::wayOut);
    }

    private void wayOut(WayOut way) {
        lines.item(
                way.helps() ? "  yes  " : "  no   ",
                text().words(way.what()) + ": then " + Decimals.fixed(way.ratio() * 100, 0)
                        + " % of what they may, for "
                        + Decimals.trimmed(way.hours(), 2) + " hours of work more; "
                        + text().words(way.then()));
    }

    private void spacings(Carried carried) {
        if (carried.spacings().isEmpty()) {
            return;
        }
        lines.heading("How far apart stringers may stand under one board of this wood, middle to middle");
        for (TreadSpacing spacing : carried.spacings()) {
            lines.entry(
                    spacing.board(),
                    TapeWriter.write(spacing.greatest().roundedDown(tape.graduation()), tape, Tape.Style.PLAIN)
                            + ", by " + spacing.governedBy());
        }
    }
}
