package pitchboard.carry;

import java.util.Optional;
import java.util.function.Function;
import pitchboard.measure.Phrase;
import pitchboard.measure.Reckoned;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Utilisation;

/**
 * Turns what was reckoned into findings.
 *
 * @param topic they are about
 * @param checks with the wood that was said, or the weakest
 * @param best with the strongest wood, where nobody said which: only what fails with that, too, is a fail
 * @param bestWood its name
 * @param remedy what to do where it fails
 */
record Judging<C>(
        MemberFinding.Topic topic,
        C checks,
        Optional<C> best,
        String bestWood,
        Place where,
        Phrase remedy,
        Source source) {
    /** What one check is called. */
    record Name(String id, String subject, String plain) {}

    /** @param name its plain words hold {@code {}} for the share that is used */
    MemberFinding of(Name name, Function<C, Answer<Utilisation>> check) {
        return check.apply(checks)
                .match(
                        found -> known(name, found, best.flatMap(better -> ratio(check.apply(better)))),
                        because -> finding(
                                name,
                                Verdict.cannotTell(because),
                                Phrase.of("it cannot be told: " + because),
                                Optional.empty()));
    }

    private static Optional<Double> ratio(Answer<Utilisation> answer) {
        return answer.match(found -> Optional.of(found.ratio()), because -> Optional.empty());
    }

    private MemberFinding known(Name name, Utilisation found, Optional<Double> withBest) {
        Phrase words = Phrase.of(name.plain(), Reckoned.share(found.ratio()));
        Phrase all = withBest.filter(ratio -> !found.isEnough())
                .map(ratio -> words.and("; ", Phrase.of("were it " + bestWood + ", {}", Reckoned.share(ratio))))
                .orElse(words);
        return finding(name, verdict(found, withBest), all, Optional.of(found));
    }

    private Verdict verdict(Utilisation found, Optional<Double> withBest) {
        Limit limit = Limit.atMost(found.capacity().value());
        if (found.isEnough()) {
            return new Verdict.Pass(found.demand().value(), limit);
        }
        if (withBest.filter(ratio -> ratio <= 1).isPresent()) {
            return Verdict.cannotTell(
                    "say of what wood it is: the weakest that is commonly sold would be used to {}, " + bestWood
                            + " to {}",
                    Reckoned.share(found.ratio()),
                    Reckoned.share(withBest.get()));
        }
        return new Verdict.Fail(found.demand().value(), limit, where, remedy);
    }

    /** A check of which no code asks, so that nothing fails by it. */
    MemberFinding advised(Name name, Function<C, Answer<Utilisation>> check, String unasked) {
        MemberFinding judged = of(name, check);
        if (!judged.working().map(Utilisation::isEnough).orElse(true)) {
            Verdict open =
                    Verdict.cannotTell(unasked, Reckoned.share(judged.ratio().orElse(0.0)));
            return finding(name, open, judged.words(), judged.working());
        }
        return judged;
    }

    MemberFinding finding(Name name, Verdict verdict, Phrase words, Optional<Utilisation> working) {
        return new MemberFinding(name.id(), topic, name.subject(), verdict, words, working, source);
    }
}
