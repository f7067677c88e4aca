package pitchboard.rules.books.pacific;

import static pitchboard.measure.Length.mm;

import java.util.List;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.RiseDeviationAtMost;
import pitchboard.rules.kinds.evenness.RunDeviationAtMost;
import pitchboard.rules.kinds.guards.UnguardedDropLessThan;
import pitchboard.rules.kinds.guards.UnguardedEdgeDropLessThan;
import pitchboard.rules.kinds.pairs.PitchAtMost;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.FlightRiseAtMost;
import pitchboard.rules.kinds.steps.FlightRisersAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** D1/AS1, second edition, New Zealand: what its Table 6 says about four kinds of straight stairs. */
public final class D1As1 {
    private static final Edition EDITION =
            new Edition("Acceptable Solution D1/AS1: access routes", "second edition", "NZ D1/AS1");
    private static final Citing IN = new Citing(EDITION);
    private static final Rulebook ACCESSIBLE = book(
            "accessible",
            "Accessible stairs in New Zealand, for people with disabilities too.",
            new Row(32, 180, 310, 2500));
    private static final Rulebook MAIN_PRIVATE =
            book("main private", "The main stair of a dwelling in New Zealand.", new Row(37, 190, 280, 4000));
    private static final Rulebook SECONDARY_PRIVATE =
            book("secondary private", "Any other stair of a dwelling in New Zealand.", new Row(41, 200, 250, 4000));
    private static final Rulebook MINOR_PRIVATE = book(
            "minor private",
            "Stairs for service and minor stairs of a dwelling in New Zealand.",
            new Row(47, 220, 220, 4000));

    private D1As1() {}

    /** A row of Table 6, and the climb that goes with it, in degrees and millimetres. */
    private record Row(int pitch, int rise, int tread, int climb) {}

    /** The four kinds, the gentlest first. */
    public static List<Rulebook> rulebooks() {
        return List.of(ACCESSIBLE, MAIN_PRIVATE, SECONDARY_PRIVATE, MINOR_PRIVATE);
    }

    private static Rulebook book(String kind, String scope, Row row) {
        return Rulebook.of("NZ D1/AS1 " + kind, EDITION, scope, List.of(steps(row), flight(row)), List.of());
    }

    private static List<Rule> steps(Row row) {
        return List.of(
                new PitchAtMost(IN.read("Table 6"), Angle.degrees(row.pitch)),
                new RiseAtMost(IN.read("Table 6"), mm(row.rise)),
                new RunAtLeast(IN.read("Table 6"), mm(row.tread)),
                new TopRunAtLeast(IN.read("Table 6"), mm(row.tread)),
                new RiseDeviationAtMost(IN.read("4.1"), mm(5)),
                new RunDeviationAtMost(IN.read("4.1"), mm(5)));
    }

    private static List<Rule> flight(Row row) {
        return List.of(
                new FlightRisersAtLeast(IN.read("NZBC D1.3.3"), new Count(2), FlightRisersAtLeast.Fewer.FORBIDDEN),
                new FlightRiseAtMost(IN.memory("4.3"), mm(row.climb)),
                new HeadroomAtLeast(IN.memory("1.4"), mm(2000), List.of()),
                new HandrailHeightAtLeast(IN.memory("6.0"), mm(900)),
                new HandrailHeightAtMost(IN.memory("6.0"), mm(1000)),
                new UnguardedDropLessThan(IN.memory("NZBC F4.3.1"), mm(1000)),
                new UnguardedEdgeDropLessThan(IN.memory("NZBC F4.3.1"), mm(1000)));
    }
}
