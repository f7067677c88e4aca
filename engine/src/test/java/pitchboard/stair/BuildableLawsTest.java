package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pitchboard.Samples;
import pitchboard.measure.Length;

/** Objections of wood and space on random stairs, against the same worked out by hand. */
final class BuildableLawsTest {
    private static final Samples<Stair> STAIRS = Samples.anyStairs(8_000);
    private static final Buildable WOOD = new Buildable();

    /** Kinds whose measured value may not exceed the limit; of all others it may not fall short. */
    private static final List<String> TOO_MUCH = List.of(
            "space",
            "treads-clear",
            "stringers-fit",
            "wood-left",
            "support-fits",
            "first-cut",
            "head-meets-header",
            "ledger-fits",
            "head-notch",
            "hanger-fits");

    @Test
    void everything_against_a_stair_is_found_and_nothing_else() {
        STAIRS.hold(stair -> assertThat(ids(stair)).isEqualTo(HandCheck.against(stair)));
    }

    @Test
    void what_an_objection_measured_is_on_the_wrong_side_of_its_limit() {
        STAIRS.hold(stair -> assertThat(WOOD.objections(stair)).allSatisfy(objection -> {
            Length measured = (Length) objection.measured();
            Length limit = (Length) objection.limit();
            boolean wrong = TOO_MUCH.contains(objection.id()) ? measured.isAtLeast(limit) : measured.isAtMost(limit);
            assertThat(wrong).as(objection.toString()).isTrue();
        }));
    }

    @Test
    void nearly_every_kind_of_objection_comes_up() {
        Set<String> kinds =
                STAIRS.stream().flatMap(stair -> ids(stair).stream()).collect(Collectors.toSet());
        assertThat(kinds)
                .contains(
                        "space",
                        "tread-covers-run",
                        "treads-clear",
                        "wood-left",
                        "foot-reaches",
                        "first-cut",
                        "kicker-fits",
                        "head-meets-header",
                        "head-above-header",
                        "support-fits",
                        "ledger-fits",
                        "hanger-fits");
    }

    private static Set<String> ids(Stair stair) {
        return WOOD.objections(stair).stream().map(Objection::id).collect(Collectors.toCollection(TreeSet::new));
    }
}
