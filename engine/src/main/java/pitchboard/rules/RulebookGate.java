package pitchboard.rules;

import java.util.ArrayList;
import java.util.List;
import pitchboard.stair.Gate;
import pitchboard.stair.Objection;
import pitchboard.stair.Stair;

/** Speaks for a rulebook while a stair is chosen: only what risers and run can put right. */
public final class RulebookGate implements Gate {
    private final Rulebook book;
    private final List<Rulebook.Entry> shaping;

    public RulebookGate(Rulebook book) {
        this.book = book;
        this.shaping = book.entries().stream()
                .filter(entry -> entry.rule().shapesTheFlight())
                .toList();
    }

    @Override
    public List<Objection> objections(Stair candidate) {
        List<Objection> found = List.of();
        for (Rulebook.Entry entry : shaping) {
            if (book.findRelease(entry, candidate.brief()).isEmpty()
                    && entry.rule().judge(candidate) instanceof Verdict.Fail fail) {
                found = found.isEmpty() ? new ArrayList<>() : found;
                found.add(objection(entry, fail));
            }
        }
        return found;
    }

    @Override
    public boolean admits(Stair candidate) {
        return shaping.stream().noneMatch(entry -> objects(entry, candidate));
    }

    private boolean objects(Rulebook.Entry entry, Stair candidate) {
        return book.findRelease(entry, candidate.brief()).isEmpty()
                && entry.rule().judge(candidate) instanceof Verdict.Fail;
    }

    private static Objection objection(Rulebook.Entry entry, Verdict.Fail fail) {
        Rule rule = entry.rule();
        return new Objection(
                rule.id(), rule.subject(), fail.measured(), fail.limit().value(), citation(entry), fail.remedy());
    }

    private static String citation(Rulebook.Entry entry) {
        String clause = entry.rule().clause().citation();
        return entry.changes().isEmpty()
                ? clause
                : clause + ", changed by " + entry.changes().get(0).amendment().saidBy();
    }
}
