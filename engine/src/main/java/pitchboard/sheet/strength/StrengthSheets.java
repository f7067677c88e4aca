package pitchboard.sheet.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.carry.Carried;
import pitchboard.carry.MemberFinding;
import pitchboard.carry.MemberText;
import pitchboard.carry.WayOut;
import pitchboard.measure.Decimals;
import pitchboard.measure.Tape;
import pitchboard.rules.Verdict;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.stair.Stair;

/** The sheets about strength: one to look at, and tables behind it. */
public final class StrengthSheets {
    private static final String TITLE = "Will it carry?";
    private static final double GAP = 8;
    private static final double BETWEEN = 1;
    private static final double WORDS = 30;
    private static final int MOST_WAYS = 3;
    private static final List<MemberFinding.Topic> TOLD = List.of(
            MemberFinding.Topic.STRINGERS,
            MemberFinding.Topic.TREADS,
            MemberFinding.Topic.JOINTS,
            MemberFinding.Topic.SUPPORT,
            MemberFinding.Topic.GUARD,
            MemberFinding.Topic.GROUND);

    private final Stair stair;
    private final Carried carried;
    private final MemberText text;
    private final Draft draft;
    private final Pencil pencil;

    private StrengthSheets(Stair stair, Carried carried, Frame frame) {
        this.stair = stair;
        this.carried = carried;
        this.text = MemberText.on(stair.brief().tape(), Tape.Style.PRINTED);
        this.draft = frame.draft("strength", TITLE);
        this.pencil = draft.pencil();
    }

    public static List<Draft> of(Stair stair, Carried carried, Frame frame) {
        StrengthSheets first = new StrengthSheets(stair, carried, frame);
        first.draw();
        List<Draft> drafts = new ArrayList<>();
        drafts.add(first.draft);
        drafts.addAll(new CheckTables(stair.brief().tape(), carried)
                .over(page -> frame.draft("strength-" + (page + 1), "Strength: checks and factors")));
        return drafts;
    }

    private void draw() {
        Box room = draft.room();
        Box left = room.leftPart(room.width() * 0.5 - GAP / 2);
        Box right = room.rightPart(room.width() * 0.5 - GAP / 2);
        double y = verdicts(left);
        y = new UseBars(pencil).draw(left.withoutTop(y - left.top() + 6), carried.findings());
        rests(left.withoutTop(y - left.top() + 6));
        y = new LoadPicture(draft, stair, carried).draw(right.topPart(room.height() * 0.62));
        y = waysOut(right.withoutTop(y - right.top() + 5));
        pencil.paragraph(
                Spot.of(right.left(), Math.max(y + 4, right.bottom() - WORDS)),
                right.width(),
                "**Whose word goes before this** " + Carried.WHOSE_WORD,
                Lettering.NOTE);
    }

    /** The worst of each member in one plain sentence. */
    private double verdicts(Box box) {
        double y = box.top() + Lettering.TITLE.capHeight();
        pencil.text(Spot.of(box.left(), y), headline(), Lettering.TITLE, Align.LEFT);
        y += 3;
        for (MemberFinding.Topic topic : TOLD) {
            Optional<MemberFinding> told = carried.findWorst(topic).or(() -> findFirst(topic));
            if (told.isPresent()) {
                MemberFinding worst = told.get();
                y = pencil.paragraph(
                        Spot.of(box.left(), y + 1.6),
                        box.width(),
                        "**" + sign(worst) + "**  " + capital(text.words(worst.words())) + ".",
                        Lettering.DIMENSION);
            }
        }
        return pencil.paragraph(
                Spot.of(box.left(), y + 1.6), box.width(), "Reckoned by " + carried.method() + ".", Lettering.NOTE);
    }

    private String headline() {
        long failing =
                carried.findings().stream().filter(MemberFinding::isFailure).count();
        long open = carried.findings().stream()
                .filter(finding -> finding.verdict() instanceof Verdict.CannotTell)
                .count();
        String fails = failing == 0 ? "No check fails" : failing == 1 ? "1 check FAILS" : failing + " checks FAIL";
        return open == 0 ? fails : fails + ", " + open + " cannot be told";
    }

    private Optional<MemberFinding> findFirst(MemberFinding.Topic topic) {
        return carried.findings().stream()
                .filter(finding -> finding.topic() == topic)
                .findFirst();
    }

    private static String sign(MemberFinding finding) {
        return finding.verdict().match(pass -> "pass", fail -> "FAIL", not -> "–", cannot -> "?");
    }

    private static String capital(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    /** The first few that would help; returns how far down they reach. */
    private double waysOut(Box box) {
        List<WayOut> helping = carried.waysOut().stream().filter(WayOut::helps).toList();
        if (carried.waysOut().isEmpty()) {
            return box.top();
        }
        double y = box.top() + Lettering.NAME.capHeight();
        pencil.text(Spot.of(box.left(), y), "What would make the stringers carry", Lettering.NAME, Align.LEFT);
        y += 2;
        if (helping.isEmpty()) {
            return pencil.paragraph(
                    Spot.of(box.left(), y),
                    box.width(),
                    "• Nothing that was tried is enough by itself: change more than one thing, or ask an engineer.",
                    Lettering.NOTE);
        }
        for (WayOut way : helping.subList(0, Math.min(MOST_WAYS, helping.size()))) {
            String words = "• " + capital(text.words(way.what())) + ": then **"
                    + Decimals.fixed(way.ratio() * 100, 0) + " %** of what they may. "
                    + capital(text.words(way.then())) + ".";
            y = pencil.paragraph(Spot.of(box.left(), y), box.width(), words, Lettering.NOTE) + BETWEEN;
        }
        return y;
    }

    /** What nobody said. */
    private void rests(Box box) {
        double y = box.top() + Lettering.NAME.capHeight();
        pencil.text(Spot.of(box.left(), y), "What it rests on", Lettering.NAME, Align.LEFT);
        y += 2;
        for (String words : carried.assumptions()) {
            y = pencil.paragraph(Spot.of(box.left(), y), box.width(), "• " + words, Lettering.NOTE);
            y += BETWEEN;
        }
    }
}
