package pitchboard.job;

import java.util.List;
import pitchboard.parts.PartMaker;
import pitchboard.parts.Worksheet;
import pitchboard.rules.Checker;
import pitchboard.rules.RulebookGate;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.papers.Draughtsman;
import pitchboard.sheet.papers.Subject;
import pitchboard.sheet.pictures.Pictures;
import pitchboard.stair.Choices;
import pitchboard.stair.Solver;
import pitchboard.stair.Stair;

/** The whole job, in reading order. */
public final class Pipeline {
    private Pipeline() {}

    /** From what was said to a stair with its findings, pieces and figures, or to the reasons why none fits. */
    public static Outcome solve(Job job) {
        Choices choices = Solver.choices(job.site(), job.brief(), new RulebookGate(job.rulebook()));
        return choices.chosen()
                .<Outcome>map(option -> designed(job, choices, option.stair()))
                .orElseGet(() -> new Outcome.NoStair(job, choices));
    }

    private static Outcome.Designed designed(Job job, Choices choices, Stair stair) {
        return new Outcome.Designed(
                job,
                choices,
                stair,
                Checker.check(stair, job.rulebook()),
                PartMaker.partsOf(stair),
                Worksheet.of(stair));
    }

    /** The set of sheets for a stair. */
    public static List<Sheet> sheets(Outcome.Designed designed) {
        return Draughtsman.draw(subject(designed));
    }

    /** The pictures of a stair for a screen. */
    public static List<Picture> pictures(Outcome.Designed designed) {
        return Pictures.draw(subject(designed));
    }

    private static Subject subject(Outcome.Designed designed) {
        return new Subject(
                designed.stair(),
                designed.parts(),
                designed.findings(),
                designed.worksheet(),
                designed.job().rulebook(),
                designed.job().fingerprint().text());
    }
}
