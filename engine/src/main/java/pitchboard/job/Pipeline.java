package pitchboard.job;

import java.util.List;
import java.util.function.Predicate;
import pitchboard.carry.Carried;
import pitchboard.carry.Carrier;
import pitchboard.carry.LoadRules;
import pitchboard.carry.SecondLook;
import pitchboard.parts.PartMaker;
import pitchboard.parts.Worksheet;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.Rulebook;
import pitchboard.rules.RulebookGate;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.papers.Draughtsman;
import pitchboard.sheet.pictures.FindingPlaces;
import pitchboard.sheet.pictures.Pictures;
import pitchboard.sheet.subject.Subject;
import pitchboard.stair.Choices;
import pitchboard.stair.Considered;
import pitchboard.stair.Option;
import pitchboard.stair.Solver;
import pitchboard.stair.Stair;

/** The whole job, in reading order. */
public final class Pipeline {
    private static final int MOST_OTHERS = 40;

    private Pipeline() {}

    /** From what was said to a stair with its findings, pieces and figures, or to the reasons why none fits. */
    public static Outcome solve(Job job) {
        Choices choices = Solver.choices(job.site(), job.brief(), new RulebookGate(job.rulebook()));
        return choices.chosen()
                .<Outcome>map(option -> designed(job, choices, option.stair()))
                .orElseGet(() -> new Outcome.NoStair(job, choices));
    }

    /** Every stair that is tried for a job, with what rulebook, space and wood say of it in short. */
    public static List<Considered> considered(Job job) {
        return Solver.considered(job.site(), job.brief(), new RulebookGate(job.rulebook()));
    }

    private static Outcome.Designed designed(Job job, Choices choices, Stair stair) {
        Carried carried = Carrier.check(stair, job.rulebook(), others(choices));
        return new Outcome.Designed(
                job,
                choices,
                stair,
                findings(stair, job.rulebook(), carried),
                PartMaker.partsOf(stair),
                Worksheet.of(stair),
                carried);
    }

    /** What a rulebook says, its loads answered by what was reckoned. */
    private static List<Finding> findings(Stair stair, Rulebook book, Carried carried) {
        return LoadRules.answered(Checker.check(stair, book), stair, book, carried);
    }

    /** What a rulebook says of a stair, its loads included. */
    static List<Finding> findings(Stair stair, Rulebook book) {
        return findings(stair, book, Carrier.check(stair, book, List.of()));
    }

    /** The stringers by finite elements, for those who ask: some tenths of a second. */
    public static SecondLook secondLook(Outcome.Designed designed) {
        return SecondLook.at(designed.stair(), designed.job().rulebook());
    }

    /** What could be built instead, best first: as many as are worth a thought. */
    private static List<Stair> others(Choices choices) {
        return choices.allowed().stream().map(Option::stair).limit(MOST_OTHERS).toList();
    }

    /** The set of sheets for a stair. */
    public static List<Sheet> sheets(Outcome.Designed designed) {
        return sheets(designed, id -> true);
    }

    /** Those sheets of the set whose id is wanted; the others are not drawn when that can be spared. */
    public static List<Sheet> sheets(Outcome.Designed designed, Predicate<String> wanted) {
        return Draughtsman.draw(subject(designed), wanted);
    }

    /** The pictures of a stair for a screen, those whose id is wanted. */
    public static List<Picture> pictures(Outcome.Designed designed, Predicate<String> wanted) {
        return Pictures.draw(subject(designed), wanted);
    }

    /** Where on the picture of the stair the findings are that want attention. */
    public static List<FindingPlaces.Placed> places(Outcome.Designed designed) {
        return FindingPlaces.of(subject(designed));
    }

    private static Subject subject(Outcome.Designed designed) {
        return new Subject(
                designed.stair(),
                designed.parts(),
                designed.findings(),
                designed.worksheet(),
                designed.carried(),
                designed.job().rulebook(),
                designed.job().fingerprint().text());
    }
}
