package pitchboard.rules.books.america;

import static pitchboard.measure.Length.inches;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.RiseSpreadAtMost;
import pitchboard.rules.kinds.evenness.RunSpreadAtMost;
import pitchboard.rules.kinds.guards.GuardAsHandrailAtLeast;
import pitchboard.rules.kinds.guards.GuardAsHandrailAtMost;
import pitchboard.rules.kinds.guards.GuardHeightAtLeast;
import pitchboard.rules.kinds.guards.GuardOpeningAtMost;
import pitchboard.rules.kinds.guards.UnguardedRiseAtMost;
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
import pitchboard.rules.kinds.rails.UnrailedRiseAtMost;
import pitchboard.rules.kinds.rails.UnrailedRisersLessThan;
import pitchboard.rules.kinds.steps.FlightRiseAtMost;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** 29 CFR 1926, subpart X: what it says about stairs on construction sites. */
public final class Osha1926 {
    private static final Edition EDITION =
            new Edition("Occupational safety: construction, 29 CFR 1926 subpart X", "since 15 March 1991", "OSHA 1926");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE = "Stairs that are used while building in the USA, temporary stairs among them.";
    private static final Rulebook BOOK = book();

    private Osha1926() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters = List.of(steps(), landings(), rails(), guards(), loads());
        return Rulebook.of("OSHA 1926", EDITION, SCOPE, chapters, List.of());
    }

    private static List<Rule> steps() {
        return List.of(
                new PitchAtLeast(IN.elsewhere("1926.1052(a)(2)"), Angle.degrees(30)),
                new PitchAtMost(IN.elsewhere("1926.1052(a)(2)"), Angle.degrees(50)),
                new RiseSpreadAtMost(IN.read("1926.1052(a)(3)"), inches(0, 1, 4)),
                new RunSpreadAtMost(IN.read("1926.1052(a)(3)"), inches(0, 1, 4)),
                new FlightRiseAtMost(IN.elsewhere("1926.1052(a)(1)"), inches(144)));
    }

    private static List<Rule> landings() {
        return List.of(
                new LandingDepthAtLeast(
                        End.BOTTOM, IN.elsewhere("1926.1052(a)(1)"), Optional.of(inches(30)), List.of()),
                new LandingDepthAtLeast(End.TOP, IN.elsewhere("1926.1052(a)(1)"), Optional.of(inches(30)), List.of()),
                new LandingWidthAtLeast(
                        End.BOTTOM, IN.elsewhere("1926.1052(a)(1)"), Optional.of(inches(22)), List.of()),
                new LandingWidthAtLeast(End.TOP, IN.elsewhere("1926.1052(a)(1)"), Optional.of(inches(22)), List.of()),
                new ClearOfDoorAtLeast(End.BOTTOM, IN.read("1926.1052(a)(4)"), inches(20)),
                new ClearOfDoorAtLeast(End.TOP, IN.read("1926.1052(a)(4)"), inches(20)));
    }

    private static List<Rule> rails() {
        return List.of(
                new UnrailedRisersLessThan(IN.memory("1926.1052(c)(1)"), new Count(4)),
                new UnrailedRiseAtMost(IN.memory("1926.1052(c)(1)"), inches(30)),
                new HandrailHeightAtLeast(IN.elsewhere("1926.1052(c)(6)"), inches(30)),
                new HandrailHeightAtMost(IN.elsewhere("1926.1052(c)(6)"), inches(37)),
                new HandrailClearanceAtLeast(IN.memory("1926.1052(c)(11)"), inches(3)));
    }

    /** What the document calls a stair rail is a guard here. */
    private static List<Rule> guards() {
        return List.of(
                new UnguardedRisersLessThan(IN.memory("1926.1052(c)(1)"), new Count(4)),
                new UnguardedRiseAtMost(IN.memory("1926.1052(c)(1)"), inches(30)),
                new GuardHeightAtLeast(IN.elsewhere("1926.1052(c)(3)"), inches(36)),
                new GuardAsHandrailAtLeast(IN.memory("1926.1052(c)(7)"), inches(36)),
                new GuardAsHandrailAtMost(IN.memory("1926.1052(c)(7)"), inches(37)),
                new GuardOpeningAtMost(IN.elsewhere("1926.1052(c)(4)"), inches(19)));
    }

    private static List<Rule> loads() {
        return List.of(ToLookAt.of(
                Matter.LOAD_ON_RAIL, IN.elsewhere("1926.1052(c)(5)"), "200 lbf down or out, within 2 in of the top"));
    }
}
