package pitchboard.carry;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import pitchboard.brief.Fasteners;
import pitchboard.carry.fixings.Enough;
import pitchboard.carry.fixings.FixingChecks;
import pitchboard.carry.fixings.FixingChecks.Asked;
import pitchboard.carry.fixings.Joint;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.JointWoods;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.measure.Reckoned;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.source.Practice;
import pitchboard.strength.Answer;
import pitchboard.strength.Utilisation;

/** Turns what holds one place into a finding: against what is asked of it, or what it must hold where nobody said. */
record Fixed(MemberFinding.Topic topic, Basis basis, Place where) {
    /**
     * One place.
     *
     * @param unsaid what nobody said and what it must hold, its {@code {}} for the force
     * @param assumed whether one of its woods is only assumed
     */
    record Case(
            Judging.Name name,
            Optional<Fasteners> said,
            Function<JointWoods, Joint> joint,
            Asked asked,
            String unsaid,
            boolean assumed) {}

    MemberFinding across(Case it) {
        return judged(
                it, each -> each.holds(it.asked()), () -> Enough.across(joint(it, false), it.asked(), basis.units()));
    }

    MemberFinding pulled(Case it) {
        return judged(
                it, each -> each.pulls(it.asked()), () -> Enough.pulled(joint(it, false), it.asked(), basis.units()));
    }

    private Joint joint(Case it, boolean best) {
        return it.joint().apply(new JointWoods(basis.woods(), best));
    }

    private MemberFinding judged(
            Case it, Function<FixingChecks, Answer<Utilisation>> check, Supplier<Optional<Phrase>> enough) {
        Quantity must = basis.units().show(it.asked().both());
        if (it.said().isEmpty()) {
            Phrase needed = Phrase.of(it.unsaid(), must);
            return open(it.name(), needed.and("; ", such(enough.get())));
        }
        Fasteners said = it.said().get();
        Judging<FixingChecks> judging = new Judging<>(
                topic,
                new FixingChecks(said, joint(it, false), basis.units()),
                it.assumed() && said instanceof Fasteners.Sized
                        ? Optional.of(new FixingChecks(said, joint(it, true), basis.units()))
                        : Optional.empty(),
                basis.woods().bestName(),
                where,
                Phrase.of("use more or larger fasteners, or a metal part that may hold {}", must),
                FixingChecks.source(said));
        MemberFinding found = judging.of(it.name(), check);
        return found.working().isPresent() || found.isFailure()
                ? found
                : open(it.name(), reason(check.apply(judging.checks())).and("; ", Phrase.of("it must hold {}", must)));
    }

    private Phrase such(Optional<Phrase> enough) {
        if (basis.isEurocode()) {
            return Phrase.of("say what your fasteners may hold");
        }
        return enough.map(all -> Phrase.of("such as").and(" ", all))
                .orElseGet(
                        () -> Phrase.of("no common screws are enough there: use a deeper board, a thicker header or a"
                                + " metal part, and say what it may hold"));
    }

    private static Phrase reason(Answer<Utilisation> answer) {
        return Phrase.of(answer.match(found -> "", because -> because));
    }

    /** A part that is known by what it may hold alone. */
    MemberFinding rated(Judging.Name name, Optional<Reckoned> allowed, Asked asked, String unsaid) {
        Quantity must = basis.units().show(asked.both());
        return allowed.map(load -> new Fasteners.Rated(load, 1))
                .map(part -> new Judging<>(
                                topic,
                                part,
                                Optional.empty(),
                                "",
                                where,
                                Phrase.of("use one that may hold {}", must),
                                FixingChecks.source(part))
                        .of(name, each -> Answer.known(FixingChecks.rated(each, asked, basis.units()))))
                .orElseGet(() -> open(name, Phrase.of(unsaid, must)));
    }

    /** One that no code is sure to ask for, so that nothing fails by it. */
    MemberFinding unasked(MemberFinding found, String words) {
        Verdict open = Verdict.cannotTell(words, Reckoned.share(found.ratio().orElse(0.0)));
        return new MemberFinding(
                found.id(), topic, found.subject(), open, found.words(), found.working(), found.source());
    }

    MemberFinding open(Judging.Name name, Phrase words) {
        return finding(name, new Verdict.CannotTell(words, Optional.empty()), words);
    }

    MemberFinding none(Judging.Name name, String because, Phrase words) {
        return finding(name, Verdict.doesNotApply(because), words);
    }

    private MemberFinding finding(Judging.Name name, Verdict verdict, Phrase words) {
        return new MemberFinding(name.id(), topic, name.subject(), verdict, words, Optional.empty(), Practice.STATICS);
    }
}
