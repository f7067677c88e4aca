package pitchboard.job;

import java.util.ArrayList;
import java.util.List;
import pitchboard.carry.MemberFinding;
import pitchboard.carry.MemberText;
import pitchboard.costing.Scope;
import pitchboard.measure.Tape;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;

/** What a crew must know of a stair before it offers it to anybody. */
final class Cautions {
    private Cautions() {}

    /** Rules that fail, members that do not carry, and what is wanted but in no price; each names the job. */
    static List<String> of(Outcome.Designed job) {
        Tape tape = job.job().brief().tape();
        String name = job.job().brief().title().job() + " ";
        List<String> all = new ArrayList<>();
        job.findings().stream()
                .filter(Finding::isFailure)
                .forEach(finding -> all.add(name + "fails a rule: "
                        + FindingText.on(tape, Tape.Style.PLAIN).line(finding)));
        job.carried().findings().stream()
                .filter(MemberFinding::isFailure)
                .forEach(finding -> all.add(name + "does not carry: "
                        + MemberText.on(tape, Tape.Style.PLAIN).line(finding)));
        Scope.notPriced(job.stair(), job.parts())
                .forEach(words -> all.add(name + "is priced without something: " + words));
        return all;
    }
}
