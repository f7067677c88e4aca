package pitchboard.carry;

import java.util.List;
import java.util.Optional;
import pitchboard.carry.elements.ByElements;
import pitchboard.carry.elements.Instant;
import pitchboard.measure.Phrase;
import pitchboard.measure.Reckoned;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.source.Confidence;
import pitchboard.source.Practice;
import pitchboard.strength.Answer;
import pitchboard.strength.Units;

/** The second opinion on the stringers as findings. It passes where it agrees with the throat, and never fails. */
final class SecondFindings {
    private static final Practice RULE =
            new Practice("compact rule, computed on eleven boards by finite elements", Confidence.DERIVED);
    private static final Practice ELEMENTS =
            new Practice("finite elements of the stringer's own outline", Confidence.DERIVED);

    private static final String OVER_POST = " that runs on over the posts";

    private SecondFindings() {}

    /** By the compact rule: it is there at once. */
    static MemberFinding atOnce(Answer<Instant> instant) {
        return instant.then(Instant::share)
                .match(
                        share -> of(
                                "stringer-rule",
                                "sag of the stringers, second opinion",
                                compared(share),
                                Phrase.of(
                                        "by a second reckoning, shear and the wood of the steps included, the stringers"
                                                + " sag {} of what the throat does as a plain beam",
                                        Reckoned.share(share)),
                                RULE),
                        because -> of(
                                "stringer-rule",
                                "sag of the stringers, second opinion",
                                Verdict.doesNotApply(because),
                                Phrase.of("the compact rule says nothing of such stringers"),
                                RULE));
    }

    /** By finite elements: a disagreement with throat or rule is told, and is for an engineer. */
    static MemberFinding of(Answer<ByElements> answer) {
        return answer.match(
                SecondFindings::told,
                because -> of(
                        "stringer-elements",
                        "stringers by finite elements",
                        Verdict.cannotTell(because),
                        Phrase.of("finite elements say nothing of such stringers"),
                        ELEMENTS));
    }

    private static MemberFinding told(ByElements found) {
        List<Phrase> against = found.disagreements();
        Phrase sag = Phrase.of("by finite elements the stringers sag {}", Units.near(found.sagMm()));
        Phrase words = found.isBeam()
                ? sag.and(
                        ", ",
                        Phrase.of(
                                "{} of what the throat does as a plain beam" + (found.overPost() ? OVER_POST : "")
                                        + ", and are stretched {} of it",
                                Reckoned.share(found.sagShare()),
                                Reckoned.share(found.throat().stressRatio())))
                : sag;
        return of("stringer-elements", "stringers by finite elements", verdict(found, against), words, ELEMENTS);
    }

    private static Verdict verdict(ByElements found, List<Phrase> against) {
        if (!found.isBeam()) {
            return Verdict.doesNotApply(
                    found.overPost()
                            ? "over a post so short a board is no beam, and is not compared with one"
                            : "so short a board is no beam, and is not compared with one");
        }
        return against.stream()
                .reduce((one, other) -> one.and("; ", other))
                .<Verdict>map(all -> new Verdict.CannotTell(
                        Phrase.of("finite elements and throat disagree, let an engineer see why: ")
                                .and("", all),
                        Optional.empty()))
                .orElseGet(() -> compared(found.throat().stressRatio()));
    }

    /** The throat is meant to be on the safe side. */
    private static Verdict compared(double share) {
        return new Verdict.Pass(Reckoned.share(share), Limit.atMost(Reckoned.share(Math.max(1, share))));
    }

    private static MemberFinding of(String id, String subject, Verdict verdict, Phrase words, Practice source) {
        return new MemberFinding(id, MemberFinding.Topic.STRINGERS, subject, verdict, words, Optional.empty(), source);
    }
}
