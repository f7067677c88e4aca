package pitchboard.rules.books;

import static pitchboard.measure.Length.inches;
import static pitchboard.measure.Length.mm;

import java.util.List;
import java.util.stream.Stream;
import pitchboard.measure.Area;
import pitchboard.measure.Count;
import pitchboard.measure.Ratio;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.Advised;
import pitchboard.rules.kinds.evenness.RiseSpreadAtMost;
import pitchboard.rules.kinds.guards.EdgeGuardHeightAtLeast;
import pitchboard.rules.kinds.guards.EdgeGuardOpeningLessThan;
import pitchboard.rules.kinds.guards.GuardHeightAtLeast;
import pitchboard.rules.kinds.guards.GuardOpeningLessThan;
import pitchboard.rules.kinds.guards.UnguardedDropAtMost;
import pitchboard.rules.kinds.guards.UnguardedEdgeDropAtMost;
import pitchboard.rules.kinds.nosings.OpenRiserGapLessThan;
import pitchboard.rules.kinds.pairs.RisePlusRunAtLeast;
import pitchboard.rules.kinds.pairs.RisePlusRunAtMost;
import pitchboard.rules.kinds.pairs.RiseTimesRunAtLeast;
import pitchboard.rules.kinds.pairs.RiseTimesRunAtMost;
import pitchboard.rules.kinds.pairs.StepFormulaAtLeast;
import pitchboard.rules.kinds.pairs.StepFormulaAtMost;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.rails.UnrailedRisersLessThan;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/**
 * No code applies, as to many barns and docks: published rules of comfort, and of safety from a code that does not bind
 * here. All of it is advice, so no stair fails by it.
 */
public final class NoCode {
    private static final Edition EDITION =
            new Edition("Published rules of comfort and safety", "no code applies", "no code, guidance only");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE = "Stairs that no code is about, such as in a barn or to a dock, if that is so:"
            + " advice on comfort and safety, not law, so nothing fails by it.";
    private static final Rulebook BOOK = book();

    private NoCode() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<Rule> advice = Stream.of(comfort(), steps(), sides())
                .flatMap(List::stream)
                .map(Advised::new)
                .map(Rule.class::cast)
                .toList();
        return Rulebook.of("no code, guidance only", EDITION, SCOPE, List.of(advice), List.of());
    }

    private static List<Rule> comfort() {
        return List.of(
                new StepFormulaAtLeast(IN.memory("(trade handbooks)"), inches(24)),
                new StepFormulaAtMost(IN.read("(63 to 65 cm rule)"), mm(650)),
                new RisePlusRunAtLeast(IN.read("(US Army EN5156 rule 2)"), inches(17)),
                new RisePlusRunAtMost(IN.read("(US Army EN5156 rule 2)"), inches(19)),
                new RiseTimesRunAtLeast(IN.read("(NY Multiple Residence Law s.132)"), new Area(Ratio.of(70))),
                new RiseTimesRunAtMost(IN.read("(NY Multiple Residence Law s.132)"), new Area(Ratio.of(75))),
                new RiseAtMost(IN.read("(US Army EN5156 text)"), inches(8)));
    }

    private static List<Rule> steps() {
        return List.of(
                new RiseSpreadAtMost(IN.read("(as IRC 2018 R311.7.5.1)"), inches(0, 3, 8)),
                new OpenRiserGapLessThan(IN.read("(as IRC 2018 R311.7.5.1)"), inches(4), highUp()),
                new HeadroomAtLeast(IN.read("(as IRC 2018 R311.7.2)"), inches(80), List.of()),
                ToLookAt.of(Matter.WOOD_IN_GROUND, IN.read("(as IRC 2018 R317.1.2)")));
    }

    private static List<Proviso> highUp() {
        return List.of(OpenRiserGapLessThan.above(IN.read("(as IRC 2018 R311.7.5.1)"), inches(30)));
    }

    private static List<Rule> sides() {
        return List.of(
                new UnrailedRisersLessThan(IN.read("(as IRC 2018 R311.7.8)"), new Count(4)),
                new HandrailHeightAtLeast(IN.read("(as IRC 2018 R311.7.8.1)"), inches(34)),
                new HandrailHeightAtMost(IN.read("(as IRC 2018 R311.7.8.1)"), inches(38)),
                UnguardedDropAtMost.within(IN.read("(as IRC 2018 R312.1.1)"), inches(36), inches(30)),
                new GuardHeightAtLeast(IN.elsewhere("(as IRC 2018 R312.1.2 Ex.1)"), inches(34)),
                new GuardOpeningLessThan(IN.elsewhere("(as IRC 2018 R312.1.3 Ex.2)"), inches(4, 3, 8)),
                new UnguardedEdgeDropAtMost(IN.read("(as IRC 2018 R312.1.1)"), inches(30)),
                new EdgeGuardHeightAtLeast(IN.read("(as IRC 2018 R312.1.2)"), inches(36)),
                new EdgeGuardOpeningLessThan(IN.read("(as IRC 2018 R312.1.3)"), inches(4)));
    }
}
