package pitchboard.rules.books.america;

import static pitchboard.measure.Length.inches;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.RiseSpreadAtMost;
import pitchboard.rules.kinds.evenness.RunSpreadAtMost;
import pitchboard.rules.kinds.guards.GuardAsHandrailAtLeast;
import pitchboard.rules.kinds.guards.GuardAsHandrailAtMost;
import pitchboard.rules.kinds.guards.GuardHeightAtLeast;
import pitchboard.rules.kinds.guards.GuardOpeningAtMost;
import pitchboard.rules.kinds.guards.UnguardedEdgeDropLessThan;
import pitchboard.rules.kinds.guards.UnguardedRisersLessThan;
import pitchboard.rules.kinds.landings.ClearOfDoorAtLeast;
import pitchboard.rules.kinds.landings.End;
import pitchboard.rules.kinds.landings.LandingDepthAtLeast;
import pitchboard.rules.kinds.landings.LandingWidthAtLeast;
import pitchboard.rules.kinds.pairs.PitchAtLeast;
import pitchboard.rules.kinds.pairs.PitchAtMost;
import pitchboard.rules.kinds.rails.HandrailClearanceAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.rails.UnrailedRisersLessThan;
import pitchboard.rules.kinds.room.ClearWidthAtLeast;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** 29 CFR 1910, subpart D, as it stands since 17 January 2017: what it says about standard stairs. */
public final class Osha1910 {
    private static final Edition EDITION =
            new Edition("Occupational safety: general industry, 29 CFR 1910", "since 17 January 2017", "OSHA 1910");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE =
            "Standard stairs of workplaces in the USA, once the building work is over; new since 17 January 2017.";
    private static final Rulebook BOOK = book();

    private Osha1910() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters = List.of(steps(), room(), landings(), rails(), guards(), loads());
        return Rulebook.of("OSHA 1910", EDITION, SCOPE, chapters, List.of());
    }

    /** Uniform between landings; no difference is named, so none is let through. */
    private static List<Rule> steps() {
        return List.of(
                new PitchAtLeast(IN.read("1910.25(c)(1)"), Angle.degrees(30)),
                new PitchAtMost(IN.read("1910.25(c)(1)"), Angle.degrees(50)),
                new RiseAtMost(IN.read("1910.25(c)(2)"), inches(9, 1, 2)),
                new RunAtLeast(IN.read("1910.25(c)(3)"), inches(9, 1, 2)),
                new TopRunAtLeast(IN.read("1910.25(c)(3)"), inches(9, 1, 2)),
                new RiseSpreadAtMost(IN.memory("1910.25(b)(3)"), Length.ZERO),
                new RunSpreadAtMost(IN.memory("1910.25(b)(3)"), Length.ZERO));
    }

    private static List<Rule> room() {
        return List.of(
                new ClearWidthAtLeast(IN.elsewhere("1910.25(c)(4)"), inches(22)),
                new HeadroomAtLeast(IN.memory("1910.25(b)(2)"), inches(80), List.of()));
    }

    private static List<Rule> landings() {
        return List.of(
                new LandingDepthAtLeast(End.BOTTOM, IN.memory("1910.25(b)(4)"), Optional.of(inches(30)), List.of()),
                new LandingDepthAtLeast(End.TOP, IN.memory("1910.25(b)(4)"), Optional.of(inches(30)), List.of()),
                new LandingWidthAtLeast(End.BOTTOM, IN.memory("1910.25(b)(4)"), List.of()),
                new LandingWidthAtLeast(End.TOP, IN.memory("1910.25(b)(4)"), List.of()),
                new ClearOfDoorAtLeast(End.BOTTOM, IN.memory("1910.25(b)(5)"), inches(22)),
                new ClearOfDoorAtLeast(End.TOP, IN.memory("1910.25(b)(5)"), inches(22)));
    }

    private static List<Rule> rails() {
        return List.of(
                new UnrailedRisersLessThan(IN.memory("1910.28(b)(11)(ii)"), new Count(4)),
                new HandrailHeightAtLeast(IN.read("1910.29(f)(1)(i)"), inches(30)),
                new HandrailHeightAtMost(IN.read("1910.29(f)(1)(i)"), inches(38)),
                new HandrailClearanceAtLeast(IN.read("1910.29(f)(2)"), inches(2, 1, 4)));
    }

    /** What the document calls a stair rail is a guard here. At 42 in its top can no longer be the handrail. */
    private static List<Rule> guards() {
        return List.of(
                new UnguardedRisersLessThan(IN.memory("1910.28(b)(11)(ii)"), new Count(4)),
                new GuardHeightAtLeast(IN.read("1910.29(f)(1)(ii)(B)"), inches(42)),
                new GuardAsHandrailAtLeast(IN.memory("1910.29(f)(1)(iii)"), inches(36)),
                new GuardAsHandrailAtMost(IN.memory("1910.29(f)(1)(iii)"), inches(38)),
                new GuardOpeningAtMost(IN.read("1910.29(f)(4)"), inches(19)),
                new UnguardedEdgeDropLessThan(IN.memory("1910.28(b)(11)(i)"), inches(48)));
    }

    private static List<Rule> loads() {
        return List.of(
                ToLookAt.of(
                        Matter.LOAD_ON_FLIGHT,
                        IN.memory("1910.25(b)(6)"),
                        "5 x live load, and never less than 1000 lb at a point"),
                ToLookAt.of(
                        Matter.LOAD_ON_RAIL,
                        IN.read("1910.29(f)(7)"),
                        "200 lbf down or out, within 2 in of the top edge"));
    }
}
