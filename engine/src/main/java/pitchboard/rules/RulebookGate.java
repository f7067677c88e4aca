package pitchboard.rules;

import java.util.ArrayList;
import java.util.List;
import pitchboard.stair.Gate;
import pitchboard.stair.Objection;
import pitchboard.stair.Stair;

/** Speaks for a rulebook while a stair is chosen: only what risers and run can put right. */
public final class RulebookGate implements Gate {
    private final Rulebook book;
    private final List<Shaping> shaping;

    /** A rule that has a say, and who says so. */
    private record Shaping(Rulebook.Entry entry, String citation) {
        static Shaping of(Rulebook.Entry entry) {
            String clause = entry.rule().clause().citation();
            return new Shaping(
                    entry,
                    entry.changes().isEmpty()
                            ? clause
                            : clause + ", changed by "
                                    + entry.changes().get(0).amendment().saidBy());
        }

        Objection objection(Verdict.Fail fail) {
            Rule rule = entry.rule();
            return new Objection(
                    rule.id(), rule.subject(), fail.measured(), fail.limit().value(), citation, fail.remedy());
        }
    }

    public RulebookGate(Rulebook book) {
        this.book = book;
        this.shaping = book.entries().stream()
                .filter(entry -> entry.rule().shapesTheFlight())
                .map(Shaping::of)
                .toList();
    }

    @Override
    public List<Objection> objections(Stair candidate) {
        return firstObjections(candidate, Integer.MAX_VALUE);
    }

    @Override
    public List<Objection> firstObjections(Stair candidate, int most) {
        List<Objection> found = List.of();
        for (Shaping each : shaping) {
            if (book.findRelease(each.entry(), candidate.brief()).isEmpty()
                    && each.entry().rule().judge(candidate) instanceof Verdict.Fail fail) {
                found = found.isEmpty() ? new ArrayList<>() : found;
                found.add(each.objection(fail));
                if (found.size() == most) {
                    return found;
                }
            }
        }
        return found;
    }
}
