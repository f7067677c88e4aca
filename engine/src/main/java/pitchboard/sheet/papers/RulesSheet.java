package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.rules.Amendment;
import pitchboard.rules.Finding;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.source.Clause;

/** What the rulebook says of the stair, clause by clause, worst first. */
final class RulesSheet {
    private final Subject subject;
    private final Table table = Table.of(
            Column.left("", 20).bold(),
            Column.left("what is judged", 62),
            Column.right("it is", 24),
            Column.left("it must be", 38),
            Column.rest("what to do, or why not"),
            Column.left("clause", 40).small());

    private RulesSheet(Subject subject) {
        this.subject = subject;
    }

    static List<Draft> of(Subject subject, Frame frame) {
        RulesSheet sheet = new RulesSheet(subject);
        sheet.fill();
        return sheet.table.over(page -> frame.draft(PartsSheet.pageId("rules", page), sheet.title()));
    }

    private String title() {
        return "Rules: " + subject.rulebook().edition().shortName();
    }

    private void fill() {
        section("Fails", Verdict.Fail.class);
        section("Cannot be told yet: measure, decide or look", Verdict.CannotTell.class);
        section("Passes", Verdict.Pass.class);
        section("Does not apply here", Verdict.DoesNotApply.class);
        if (!subject.rulebook().amendments().isEmpty()) {
            table.heading("Local changes");
            subject.rulebook().amendments().forEach(this::amendment);
        }
        table.heading("Which stairs this book is about");
        table.row(
                "",
                subject.rulebook().scope(),
                "",
                "",
                "The local code as adopted decides, and the official who reads it.",
                "");
    }

    private void section(String heading, Class<? extends Verdict> kind) {
        List<Finding> findings = subject.findings().stream()
                .filter(finding -> kind.isInstance(finding.verdict()))
                .toList();
        if (!findings.isEmpty()) {
            table.heading(heading + " (" + findings.size() + ")");
            findings.forEach(this::row);
        }
    }

    private void row(Finding finding) {
        List<String> cells = new ArrayList<>();
        cells.add(finding.verdict().match(pass -> "pass", fail -> "FAIL", not -> "–", cannot -> "?"));
        cells.add(finding.rule().subject());
        cells.add(finding.verdict()
                .match(
                        pass -> subject.words(pass.measured()),
                        fail -> subject.words(fail.measured()),
                        not -> "",
                        cannot -> ""));
        cells.add(limit(finding));
        cells.add(finding.verdict()
                .match(
                        pass -> "",
                        fail -> fail.where().words() + ": " + subject.words(fail.remedy()),
                        not -> subject.words(not.because()),
                        cannot -> subject.words(cannot.missing())));
        cells.add(clause(finding.rule().clause()));
        table.row(PartRef.NONE, cells);
    }

    private String limit(Finding finding) {
        return finding.verdict()
                .match(
                        pass -> words(pass.limit()),
                        fail -> words(fail.limit()),
                        not -> "",
                        cannot -> finding.rule().limit().map(this::words).orElse(""));
    }

    private String words(Limit limit) {
        return limit.bound().words() + " " + subject.words(limit.value());
    }

    private static String clause(Clause clause) {
        String caution = clause.confidence().caution();
        return clause.locus() + (caution.isEmpty() ? "" : " (" + caution + ")");
    }

    private void amendment(Amendment change) {
        table.row(
                "",
                change.rule(),
                "",
                change.limit().map(subject::words).orElse("not enforced"),
                change.why(),
                change.saidBy() + (change.since().isEmpty() ? "" : ", since " + change.since()));
    }
}
