package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Phrase;
import pitchboard.measure.Tape;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;

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

    private final FindingText text;

    private RulesSheet(Subject subject) {
        this.subject = subject;
        this.text = FindingText.on(subject.tape(), Tape.Style.PRINTED);
    }

    static List<Draft> of(Subject subject, Frame frame) {
        RulesSheet sheet = new RulesSheet(subject);
        sheet.fill();
        return sheet.table.over(page -> frame.draft("rules", page, sheet.title()));
    }

    private String title() {
        return "Rules: " + subject.rulebook().edition().shortName();
    }

    private void fill() {
        section("Fails", Verdict.Fail.class);
        section("Cannot be told yet: measure, decide or look", Verdict.CannotTell.class);
        section("Passes", Verdict.Pass.class);
        section("Does not apply here", Verdict.DoesNotApply.class);
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
                        fail -> fail.where().words() + ": " + words(fail.remedy()),
                        not -> words(not.because()),
                        cannot -> words(cannot.missing())));
        cells.add(source(finding));
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
        return text.bound(limit);
    }

    private String words(Phrase phrase) {
        return phrase.write(subject.tape(), Tape.Style.PRINTED);
    }

    /** Without the name of the book, which the sheet's title has. */
    private String source(Finding finding) {
        String name = subject.rulebook().edition().shortName() + " ";
        String source = text.source(finding);
        return source.startsWith(name) ? source.substring(name.length()) : source;
    }
}
