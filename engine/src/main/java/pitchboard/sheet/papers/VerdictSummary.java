package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.carry.MemberFinding;
import pitchboard.rules.Finding;
import pitchboard.rules.Verdict;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** How the stair stands with its rulebook, in a few lines; the rules sheet has it all. */
final class VerdictSummary {
    private static final double ROW = 4.6;
    private static final int MOST_NAMED = 4;

    private final Subject subject;

    VerdictSummary(Subject subject) {
        this.subject = subject;
    }

    double draw(Pencil pencil, Spot topLeft) {
        double y = topLeft.y() + Lettering.NAME.capHeight();
        pencil.text(Spot.of(topLeft.x(), y), "Under " + bookName(), Lettering.NAME, Align.LEFT);
        for (String line : lines()) {
            y += ROW;
            pencil.text(Spot.of(topLeft.x(), y), line, Lettering.NOTE, Align.LEFT);
        }
        return y;
    }

    private String bookName() {
        String name = subject.rulebook().edition().shortName();
        int changes = subject.rulebook().amendments().size();
        return changes == 0 ? name : name + " with " + changes + (changes == 1 ? " local change" : " local changes");
    }

    private List<String> lines() {
        List<Finding> failures = failures();
        List<String> lines = new ArrayList<>();
        lines.add(failures.isEmpty() ? "nothing fails" : "**" + failures.size() + " FAIL**");
        failures.stream()
                .limit(MOST_NAMED)
                .forEach(finding -> lines.add("   **×** " + finding.rule().subject()));
        if (failures.size() > MOST_NAMED) {
            lines.add("   and more, see the rules sheet");
        }
        lines.add(count(Verdict.Pass.class) + " pass, " + count(Verdict.CannotTell.class)
                + " still to be measured or seen to");
        lines.add(strength());
        return lines;
    }

    private String strength() {
        long failing = subject.carried().findings().stream()
                .filter(MemberFinding::isFailure)
                .count();
        return failing == 0
                ? "strength: nothing fails, see its sheet"
                : "strength: **" + failing + " FAIL**, see its sheet";
    }

    private List<Finding> failures() {
        return subject.findings().stream().filter(Finding::isFailure).toList();
    }

    private long count(Class<? extends Verdict> kind) {
        return subject.findings().stream()
                .filter(finding -> kind.isInstance(finding.verdict()))
                .count();
    }
}
