package pitchboard.rules.kinds.surroundings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Read;
import pitchboard.StairFixtures;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.books.Books;
import pitchboard.site.Sight;
import pitchboard.site.Sights;
import pitchboard.stair.Stair;

/**
 * What somebody saw decides what no measure tells. The limits are those of the IRC 2021 as its rulebook has them.
 */
final class LooksTest {
    private static final String OUTDOORS = "setting outdoors; foot concrete; fall beside 0 in; lit yes";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # rule | stair | seen | verdict
            floor-edge-over-sides-at-most | overhead 200 in from 20 in | edge 4 3/4 in | pass
            floor-edge-over-sides-at-most | overhead 200 in from 20 in | edge 4 13/16 in | fail
            floor-edge-over-sides-at-most | overhead 200 in from 20 in | nothing | cannot tell
            floor-edge-over-sides-at-most | overhead none | nothing | does not apply
            hard-finish | upper finish 3/4 in | hard yes | pass
            hard-finish | upper finish 3/4 in | hard no | fail
            hard-finish | upper finish 3/4 in | nothing | cannot tell
            gypsum-below-at-least | setting indoors | nothing | cannot tell
            gypsum-below-at-least | setting indoors | closed no | does not apply
            gypsum-below-at-least | setting indoors | closed yes | cannot tell
            gypsum-below-at-least | setting indoors | closed yes; lining 1/2 in | pass
            gypsum-below-at-least | setting indoors | closed yes; lining 7/16 in | fail
            light-outdoors | OUT | bright yes | pass
            light-outdoors | OUT | bright no | fail
            light-outdoors | OUT | nothing | cannot tell
            light-indoors | lit yes | bright yes | pass
            light-indoors | lit yes | bright no | fail
            light-indoors | lit no | bright yes | fail
            outdoor-fixing | OUT | anchored yes | pass
            outdoor-fixing | OUT | anchored no | fail
            outdoor-fixing | OUT | nothing | cannot tell
            clearance-to-soil-at-least | OUT | soil 8 in | pass
            clearance-to-soil-at-least | OUT | soil 7 15/16 in | cannot tell
            clearance-to-soil-at-least | OUT | soil 7 15/16 in; treated no | fail
            clearance-to-soil-at-least | OUT | soil 7 15/16 in; treated yes | does not apply
            wood-in-ground | OUT; foot ground | treated yes | pass
            wood-in-ground | OUT; foot ground | treated no | fail
            fasteners-in-treated-wood | OUT | fasteners yes | pass
            fasteners-in-treated-wood | OUT | fasteners no | fail
            footing-depth-at-least | OUT | footing 11 15/16 in | fail
            footing-depth-at-least | OUT | footing 12 in | cannot tell
            footing-depth-at-least | OUT | footing 12 in; frost 12 in | pass
            footing-depth-at-least | OUT | footing 12 in; frost 12 1/16 in | fail
            egress-door-drop-at-most | OUT; top door over | nothing | cannot tell
            egress-door-drop-at-most | OUT; top door over | sill 1 1/2 in | pass
            egress-door-drop-at-most | OUT; top door over | sill 1 9/16 in | cannot tell
            egress-door-drop-at-most | OUT; top door over | sill 1 9/16 in; egress yes | fail
            egress-door-drop-at-most | OUT; top door away | sill 7 3/4 in; egress yes | pass
            egress-door-drop-at-most | OUT; top door away | sill 7 13/16 in; egress yes | fail
            egress-door-drop-at-most | OUT; top door over | egress no | does not apply
            other-door-drop-at-most | OUT; top door away | sill 7 3/4 in | pass
            other-door-drop-at-most | OUT; top door away | sill 7 13/16 in | cannot tell
            other-door-drop-at-most | OUT; top door away | sill 7 13/16 in; egress no | fail
            other-door-drop-at-most | OUT; top door away | egress yes | does not apply
            """)
    void what_was_seen_decides(String rule, String stair, String seen, String verdict) {
        String said = stair.replace("OUT", OUTDOORS);
        assertThat(word(find(rule, StairFixtures.stair(said, new Seen(seen).sights()))))
                .isEqualTo(verdict);
    }

    /** The limits are those of the books as their rulebooks have them. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # book | rule | stair | seen | verdict
            NCC 2022 private | slip-resistance | tape millimetres | slip yes | pass
            NCC 2022 private | slip-resistance | tape millimetres | slip no | fail
            NCC 2022 private | slip-resistance | tape millimetres | nothing | cannot tell
            NBC 2020 private | steep-ground-beside | OUT; guard no | beside 1/2 | pass
            NBC 2020 private | steep-ground-beside | OUT; guard no | beside 51/100 | fail
            NBC 2020 private | steep-ground-beside | OUT; guard no | nothing | cannot tell
            IBC 2021 | end-rise-slope-at-most | OUT | along 1/12 | pass
            IBC 2021 | end-rise-slope-at-most | OUT | along 1/11 | fail
            IBC 2021 | end-rise-slope-at-most | OUT | nothing | cannot tell
            IBC 2021 | end-rise-stripe-at-least | OUT | along 0/1 | does not apply
            IBC 2021 | end-rise-stripe-at-least | OUT | along 1/20; stripe 1 in | pass
            IBC 2021 | end-rise-stripe-at-least | OUT | along 1/20; stripe 15/16 in | fail
            IBC 2021 | end-rise-stripe-at-least | OUT | along 1/20 | cannot tell
            ADA 2010 | rail-underside-blocked-at-most | rails left | underside yes | pass
            ADA 2010 | rail-underside-blocked-at-most | rails left | underside no | fail
            ADA 2010 | rail-underside-blocked-at-most | rails none | underside no | does not apply
            """)
    void what_was_seen_decides_under_other_books(String book, String rule, String stair, String seen, String verdict) {
        String said = stair.replace("OUT", OUTDOORS);
        assertThat(word(find(rule, StairFixtures.stair(said, new Seen(seen).sights()), book)))
                .isEqualTo(verdict);
    }

    @Test
    void a_foothold_in_the_guard_fails_where_the_book_asks_for_none() {
        for (boolean none : new boolean[] {true, false}) {
            Sights seen = new Seen(none ? "foothold-free yes" : "foothold-free no").sights();
            Stair stair = StairFixtures.stair("tape millimetres", seen);
            Finding found = find("guard-not-climbable", stair, "AD K 2013 private");
            assertThat(word(found)).isEqualTo(none ? "pass" : "fail");
        }
    }

    @Test
    void what_was_found_amiss_reads_as_words_without_numbers() {
        Finding found = find("outdoor-fixing", StairFixtures.stair(OUTDOORS, new Seen("anchored no").sights()));
        assertThat(FindingText.on(Tape.SIXTEENTHS, Tape.Style.PLAIN).verdict(found.verdict()))
                .isEqualTo(
                        "not right (the whole flight), must be right; see that the stair is anchored or stands by itself,"
                                + " and that no toenail or pulled nail carries it");
    }

    private static Finding find(String rule, Stair stair) {
        return find(rule, stair, "IRC 2021");
    }

    private static Finding find(String rule, Stair stair, String book) {
        return Checker.check(stair, Books.findByName(book).orElseThrow()).stream()
                .filter(each -> each.rule().id().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    private static String word(Finding finding) {
        return finding.verdict()
                .match(pass -> "pass", fail -> "fail", not -> "does not apply", cannot -> "cannot tell");
    }

    /** What was seen, such as {@code soil 8 in; treated no}. */
    private record Seen(String words) {
        private static final Map<String, Sight> LENGTHS = Map.of(
                "edge", Sight.FLOOR_EDGE,
                "lining", Sight.LINING_BELOW,
                "sill", Sight.SILL_DROP,
                "soil", Sight.WOOD_ABOVE_SOIL,
                "footing", Sight.FOOTING_DEPTH,
                "frost", Sight.FROST_DEPTH,
                "stripe", Sight.END_RISE_STRIPE);
        private static final Map<String, Sight> SLOPES =
                Map.of("beside", Sight.GROUND_BESIDE, "along", Sight.GROUND_ALONG_RISER);
        private static final Map<String, Sight> ANSWERS = Map.of(
                "hard", Sight.HARD_FINISH,
                "closed", Sight.SPACE_BELOW_CLOSED,
                "egress", Sight.EGRESS_DOOR,
                "bright", Sight.BRIGHT_ENOUGH,
                "anchored", Sight.ANCHORED,
                "treated", Sight.TREATED_WOOD,
                "fasteners", Sight.FASTENERS_FIT,
                "foothold-free", Sight.NO_FOOTHOLD,
                "slip", Sight.SLIP_CLASS,
                "underside", Sight.RAIL_UNDERSIDE_FREE);

        Sights sights() {
            Map<Sight, Quantity> seen = new EnumMap<>(Sight.class);
            LENGTHS.forEach((name, sight) -> length(name).ifPresent(found -> seen.put(sight, found)));
            SLOPES.forEach((name, sight) -> slope(name).ifPresent(found -> seen.put(sight, found)));
            ANSWERS.forEach((name, sight) -> yes(name).ifPresent(found -> seen.put(sight, Found.of(found))));
            return new Sights(seen);
        }

        private Optional<Ratio> slope(String name) {
            return find(name)
                    .map(over -> over.split("/", 2))
                    .map(parts -> Ratio.of(Long.parseLong(parts[0]), Long.parseLong(parts[1])));
        }

        private Optional<Length> length(String name) {
            return find(name).map(Read::inches);
        }

        private Optional<Boolean> yes(String name) {
            return find(name).map("yes"::equals);
        }

        private Optional<String> find(String name) {
            return Stream.of(words.split("; ", -1))
                    .filter(each -> each.startsWith(name + " "))
                    .map(each -> each.substring(name.length() + 1))
                    .findFirst();
        }
    }
}
