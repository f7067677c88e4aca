package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.rules.Limit;
import pitchboard.rules.Limit.Bound;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.surroundings.Figured;
import pitchboard.source.Clause;

/** Nothing that the documents say about a straight flight is left out, and nothing is said that they do not say. */
final class ClausesTest {
    /**
     * What each line of the documents became: rules, or provisos of rules, separated by commas. A {@code not} before a
     * rule says that the line tells when something is owed and the rule how far one may go without it; a {@code ~} that
     * the rule is about the words of the line, not its number. A reason in brackets says why it is not about a
     * straight flight.
     */
    private static final Map<String, String> IRC = table("""
            width_clear_min                        | clear-width-at-least
            width_below_rail_one_side_min          | width-beside-one-rail-at-least
            width_below_rail_two_sides_min         | width-beside-two-rails-at-least
            handrail_projection_max                | handrail-projection-at-most
            headroom_min                           | headroom-at-least
            headroom_floor_edge_encroach_max       | floor-edge-over-sides-at-most
            flight_rise_max                        | flight-rise-at-most
            flight_rise_max_note                   | flight-rise-at-most
            walkline_offset                        | (turned flights)
            riser_height_max                       | rise-at-most
            riser_height_min                       | (the book sets no limit)
            uniformity_riser_range_max             | rise-spread-at-most
            riser_slope_max_deg                    | riser-rake-at-most
            open_riser_opening_sphere              | open-riser-gap-less-than
            open_riser_height_trigger              | open-riser-height
            open_riser_trigger_kind                | open-riser-height
            tread_depth_min                        | run-at-least, top-run-at-least
            uniformity_tread_range_max             | run-spread-at-most
            dimension_reference                    | hard-finish
            winder_tread_walkline_min              | (turned flights)
            winder_tread_narrow_min                | (turned flights)
            uniformity_winder_range_max            | (turned flights)
            nosing_projection_min                  | nosing-at-least, floor-nosing-at-least
            nosing_projection_max                  | nosing-at-most, floor-nosing-at-most
            uniformity_nosing_range_max            | nosing-spread-at-most
            nosing_waiver_tread_depth_min          | nosing-waiver-run
            nosing_radius_max                      | nosing-radius-at-most
            nosing_bevel_max                       | nosing-bevel-at-most
            landing_required                       | top-landing-depth-at-least, bottom-landing-depth-at-least
            landing_width_min                      | top-landing-width-at-least, bottom-landing-width-at-least
            landing_depth_min                      | top-landing-depth-at-least, bottom-landing-depth-at-least
            landing_waiver_top_interior            | top-landing-waiver-indoors
            tread_slope_max                        | tread-slope-at-most, top-landing-fall-at-most, bottom-landing-fall-at-most
            exterior_door_landing_slope_max        | door-landing-fall-at-most
            exterior_door_landing_depth_min        | door-landing-depth-at-least
            egress_door_landing_drop_max           | egress-door-drop-at-most
            other_door_landing_drop_max            | other-door-drop-at-most
            top_landing_waiver_exterior_risers_max | top-landing-waiver-outdoors
            handrail_required_risers_min           | not unrailed-risers-less-than
            handrail_height_min                    | handrail-height-at-least
            handrail_height_max                    | handrail-height-at-most
            handrail_clearance_min                 | handrail-clearance-at-least
            handrail_continuity                    | handrail-full-length
            handrail_interrupt_allowed             | handrail-interruption
            handrail_circ_dia_min                  | round-grip-at-least
            handrail_circ_dia_max                  | round-grip-at-most
            handrail_perim_min                     | grip-perimeter-at-least
            handrail_perim_max                     | grip-perimeter-at-most
            handrail_section_dim_max               | grip-section-at-most
            handrail_t2_perim_min                  | recess-from-perimeter
            handrail_t2_recess_start_max           | recess-start-at-most
            handrail_t2_recess_depth_min           | recess-depth-at-least
            handrail_t2_recess_run_min             | recess-height-at-least
            handrail_t2_top_width_min              | recess-top-width-at-least
            handrail_t2_top_width_max              | recess-top-width-at-most
            handrail_edge_radius_min               | rail-edge-radius-at-least
            guard_required_drop                    | not unguarded-drop-at-most
            guard_drop_zone                        | guard-drop-zone
            guard_height_min                       | (guards of floors, landings, porches and balconies)
            guard_height_stair_min                 | guard-height-at-least
            guard_as_handrail_height_max           | guard-as-handrail-at-most
            guard_opening_sphere                   | (guards of floors; on a stair the wider sphere of Ex.2 counts)
            guard_stair_opening_sphere             | guard-opening-less-than
            guard_triangle_sphere                  | guard-triangle-less-than
            load_live_stair                        | load-on-flight
            load_tread_concentrated                | load-on-tread
            load_rail_concentrated                 | load-on-rail
            load_rail_parallel_waiver              | load-along-guard
            guard_load_note                        | (says again what load_rail_parallel_waiver says)
            load_infill                            | load-on-infill
            lighting_interior_min                  | light-indoors
            light_switch_risers_min                | not unswitched-risers-less-than
            lighting_exterior                      | light-outdoors
            understair_gypsum_min                  | gypsum-below-at-least
            attachment_exterior                    | outdoor-fixing
            decay_ground_clearance_framing         | clearance-to-soil-at-least
            decay_ground_contact                   | wood-in-ground
            fastener_corrosion                     | fasteners-in-treated-wood
            footing_depth_min                      | footing-depth-at-least
            exempt_not_attached                    | exemption
            exempt_nonhabitable_attic              | exemption
            exempt_crawl_space                     | exemption
            scope_exceptions                       | (says again what the three exemptions say)
            spiral_width_min                       | (turned flights)
            spiral_tread_min                       | (turned flights)
            spiral_riser_max                       | (turned flights)
            spiral_headroom_min                    | (turned flights)
            """);

    private static final Map<String, String> ADK = table("""
            riser_height_min                       | rise-at-least
            riser_height_max                       | rise-at-most
            going_min                              | run-at-least, top-run-at-least
            going_max                              | run-at-most, top-run-at-most
            pitch_max_deg                          | pitch-at-most
            going_external_tapered_min             | outdoor-run-at-least
            step_formula_min                       | step-formula-at-least
            step_formula_max                       | step-formula-at-most
            uniformity                             | rise-spread-at-most, run-spread-at-most
            tread_overlap_open_min                 | tread-overlap-at-least
            open_riser_opening_sphere              | open-riser-gap-less-than
            headroom_min                           | headroom-at-least
            headroom_loft_centre_min               | headroom-in-a-loft
            width_clear_min                        | (the book sets no limit)
            risers_consecutive_max                 | risers-in-line-at-most
            landing_depth_min                      | top-landing-depth-at-least, bottom-landing-depth-at-least, top-landing-width-at-least, bottom-landing-width-at-least
            door_swing_clear_min                   | clear-of-door-at-least
            landing_ground_gradient_max            | top-landing-fall-at-most, bottom-landing-fall-at-most, ~ground-landing-only
            winder_going_narrow_min                | (turned flights)
            winder_measure_point                   | (turned flights)
            handrail_height_min                    | handrail-height-at-least
            handrail_height_max                    | handrail-height-at-most
            handrail_both_sides_width_min          | not one-rail-width-less-than
            guard_required_drop                    | not unguarded-drop-at-most
            guard_height_min                       | guard-height-at-least
            guard_height_external_min              | (balconies and roof edges)
            guard_opening_sphere                   | guard-opening-less-than, ~guard-not-climbable
            """);

    /** Rules that no line of the table gives: the clause is known, what it says is from memory alone. */
    private static final List<String> BESIDE_THE_TABLE = List.of("AD K 2013 private unrailed-risers-less-than");

    private static Map<String, String> table(String text) {
        Map<String, String> found = new LinkedHashMap<>();
        text.lines().map(line -> line.split("\\|", -1)).forEach(cells -> found.put(cells[0].strip(), cells[1].strip()));
        return found;
    }

    private static Map<String, String> tableOf(String book) {
        return book.startsWith("IRC") ? IRC : ADK;
    }

    /** Something in a book that a line of a document can stand for. */
    private record Said(String name, Clause clause, Optional<Limit> limit, String figure) {}

    private static List<Said> said(Rulebook book) {
        List<Said> all = new ArrayList<>();
        for (Rulebook.Entry entry : book.entries()) {
            Rule rule = entry.rule();
            String figure = rule instanceof Figured figured ? figured.figure() : "";
            all.add(new Said(rule.id(), rule.clause(), rule.limit(), figure));
            for (Proviso proviso : rule.provisos()) {
                all.add(new Said(proviso.id(), proviso.clause(), proviso.limit(), ""));
            }
        }
        book.exemptions()
                .forEach(exemption -> exemption
                        .clauses()
                        .forEach(clause -> all.add(new Said("exemption", clause, Optional.empty(), ""))));
        return all;
    }

    static Stream<ClauseRow> everyRow() {
        return ClauseRow.all().stream();
    }

    @ParameterizedTest
    @MethodSource("everyRow")
    void every_line_is_a_rule_with_its_clause_value_and_confidence_or_has_a_reason(ClauseRow row) {
        String meant = tableOf(row.book()).get(row.key());
        assertThat(meant).as("what became of " + row.key()).isNotNull();
        if (meant.startsWith("(")) {
            return;
        }
        Rulebook book = Books.findByName(row.book()).orElseThrow();
        for (String name : meant.replace("not ", "").split(", *", -1)) {
            assertThat(said(book))
                    .as(name)
                    .anySatisfy(said -> assertSaysTheSame(said, name, row, meant.startsWith("not ")));
        }
    }

    private static void assertSaysTheSame(Said said, String name, ClauseRow row, boolean inverse) {
        boolean words = name.startsWith("~");
        assertThat(said.name()).isEqualTo(words ? name.substring(1) : name);
        assertThat(said.clause().locus()).isEqualTo(row.clause());
        assertThat(said.clause().confidence()).isEqualTo(row.confidence());
        assertThat(row.book()).startsWith(said.clause().edition().shortName());
        if (words || !row.isNumber()) {
            return;
        }
        if (said.figure().isEmpty()) {
            Limit limit = said.limit().orElseThrow(() -> new AssertionError(name + " has no limit"));
            assertSameValue(limit.value(), row);
            assertSameSide(limit.bound(), row.comparator(), inverse);
        } else {
            assertThat(said.figure()).startsWith(row.value() + " " + row.unit());
        }
    }

    private static void assertSameValue(Quantity value, ClauseRow row) {
        BigDecimal printed = new BigDecimal(row.value());
        Ratio exact = Ratio.of(printed.unscaledValue(), BigInteger.TEN.pow(Math.max(0, printed.scale())));
        Quantity expected = switch (row.unit()) {
            case "in" -> Length.inches(exact);
            case "mm" -> Length.mm(exact);
            case "deg" -> new Angle(exact);
            case "count" -> new Count(printed.intValueExact());
            case "ratio" -> nearly(value, exact);
            default -> throw new AssertionError("no quantity has the unit " + row.unit());
        };
        assertThat(value).isEqualTo(expected);
    }

    /** Slopes are printed as decimals of seven places at most. */
    private static Quantity nearly(Quantity value, Ratio printed) {
        Ratio away = ((Ratio) value).minus(printed).abs();
        return away.compareTo(Ratio.of(1, 10_000_000)) <= 0 ? value : printed;
    }

    private static void assertSameSide(Bound bound, String comparator, boolean inverse) {
        switch (comparator) {
            case ">=" -> assertThat(bound).isEqualTo(inverse ? Bound.LESS_THAN : Bound.AT_LEAST);
            case "<=" -> assertThat(bound).isEqualTo(inverse ? Bound.MORE_THAN : Bound.AT_MOST);
            case ">" -> assertThat(bound).isEqualTo(inverse ? Bound.AT_MOST : Bound.MORE_THAN);
            case "<" -> assertThat(bound).isEqualTo(inverse ? Bound.AT_LEAST : Bound.LESS_THAN);
            default -> assertThat(comparator).isEqualTo("=");
        }
    }

    @Test
    void the_table_has_no_line_that_no_document_has() {
        assertThat(keysOf("IRC")).containsExactlyInAnyOrderElementsOf(IRC.keySet());
        assertThat(keysOf("AD K")).containsExactlyInAnyOrderElementsOf(ADK.keySet());
    }

    private static List<String> keysOf(String work) {
        return ClauseRow.all().stream()
                .filter(row -> row.book().startsWith(work))
                .map(ClauseRow::key)
                .distinct()
                .toList();
    }

    @Test
    void no_book_says_what_its_document_does_not() {
        for (Rulebook book : Books.all()) {
            List<String> lines = ClauseRow.all().stream()
                    .filter(row -> row.book().equals(book.name()))
                    .flatMap(row -> Stream.of(tableOf(book.name())
                                    .get(row.key())
                                    .replace("not ", "")
                                    .replace("~", "")
                                    .split(", *", -1))
                            .map(name -> name + " " + row.clause()))
                    .toList();
            assertThat(said(book))
                    .filteredOn(said -> !BESIDE_THE_TABLE.contains(book.name() + " " + said.name()))
                    .allSatisfy(said -> assertThat(lines)
                            .contains(said.name() + " " + said.clause().locus()));
        }
    }

    @Test
    void only_england_has_a_rule_beside_the_table() {
        assertThat(Books.all())
                .flatExtracting(book -> said(book).stream()
                        .map(said -> book.name() + " " + said.name())
                        .filter(BESIDE_THE_TABLE::contains)
                        .toList())
                .containsExactlyElementsOf(BESIDE_THE_TABLE);
    }
}
