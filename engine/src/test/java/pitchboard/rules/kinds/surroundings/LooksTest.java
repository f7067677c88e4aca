package pitchboard.rules.kinds.surroundings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Read;
import pitchboard.StairFixtures;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.books.Books;
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
        Sights sights() {
            return new Sights(
                    length("edge"),
                    yes("hard"),
                    yes("closed"),
                    length("lining"),
                    length("sill"),
                    yes("egress"),
                    yes("bright"),
                    yes("anchored"),
                    yes("treated"),
                    length("soil"),
                    yes("fasteners"),
                    length("footing"),
                    length("frost"),
                    yes("foothold-free"));
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
