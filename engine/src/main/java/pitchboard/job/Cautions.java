package pitchboard.job;

import java.util.ArrayList;
import java.util.List;
import pitchboard.carry.MemberFinding;
import pitchboard.carry.MemberText;
import pitchboard.costing.Scope;
import pitchboard.measure.Decimals;
import pitchboard.measure.Tape;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.Verdict;

/** What a crew must know of a stair before it offers it to anybody. */
final class Cautions {
    private Cautions() {}

    /** Rules that fail, members that do not carry, and what is wanted but in no price; each names the job. */
    static List<String> of(Outcome.Designed job) {
        String name = job.job().brief().title().job() + " ";
        List<String> all = new ArrayList<>();
        failures(job).forEach(words -> all.add(name + words));
        Scope.notPriced(job.stair(), job.parts())
                .forEach(words -> all.add(name + "is priced without something: " + words));
        return all;
    }

    /** Rules that fail and members that do not carry. */
    static List<String> failures(Outcome.Designed job) {
        Tape tape = job.job().brief().tape();
        List<String> all = new ArrayList<>();
        job.findings().stream()
                .filter(Finding::isFailure)
                .forEach(finding -> all.add("fails a rule: "
                        + FindingText.on(tape, Tape.Style.PLAIN).line(finding)));
        job.carried().findings().stream()
                .filter(MemberFinding::isFailure)
                .forEach(finding -> all.add("does not carry: "
                        + MemberText.on(tape, Tape.Style.PLAIN).line(finding)));
        return all;
    }

    /** How the rules stand, in a few words. */
    static String rules(Outcome.Designed job) {
        long failing = job.findings().stream().filter(Finding::isFailure).count();
        return (failing == 0 ? "nothing fails, " : failing + " FAIL, ") + count(job, Verdict.Pass.class) + " pass, "
                + count(job, Verdict.CannotTell.class) + " cannot be told yet";
    }

    private static long count(Outcome.Designed job, Class<? extends Verdict> kind) {
        return job.findings().stream()
                .filter(finding -> kind.isInstance(finding.verdict()))
                .count();
    }

    /** How far the members are used, in a few words. */
    static String strength(Outcome.Designed job) {
        String worst = job.carried().findings().stream()
                .flatMap(finding -> finding.ratio().stream())
                .max(Double::compare)
                .map(ratio -> "at most " + Decimals.fixed(ratio * 100, 0) + " % of what it may")
                .orElse("nothing could be reckoned");
        return job.carried().hasFailures() ? "DOES NOT CARRY, " + worst : "carries, " + worst;
    }
}
