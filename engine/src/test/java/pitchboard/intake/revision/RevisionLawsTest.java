package pitchboard.intake.revision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import pitchboard.intake.written.Written;

/** What holds for any two or three versions of any text with a shape. */
final class RevisionLawsTest {
    private static final List<Versions> CASES =
            LongStream.range(0, 5000).mapToObj(Versions::of).toList();

    private static void hold(Consumer<Versions> law) {
        for (int seed = 0; seed < CASES.size(); seed++) {
            try {
                law.accept(CASES.get(seed));
            } catch (AssertionError | RuntimeException broken) {
                throw new AssertionError("seed " + seed + ": " + CASES.get(seed), broken);
            }
        }
    }

    @Test
    void differences_applied_to_one_version_give_the_other() {
        hold(each -> assertSame(Differences.between(each.mine(), each.theirs()).applyTo(each.mine()), each.theirs()));
    }

    @Test
    void a_version_does_not_differ_from_itself() {
        hold(each ->
                assertThat(Differences.between(each.mine(), each.mine()).all()).isEmpty());
    }

    @Test
    void differences_the_other_way_are_the_same_places_with_the_sides_swapped() {
        hold(each -> assertThat(Differences.between(each.theirs(), each.mine()).all())
                .containsExactlyInAnyOrderElementsOf(Differences.between(each.mine(), each.theirs()).all().stream()
                        .map(one -> new Difference(one.path(), one.after(), one.before()))
                        .toList()));
    }

    @Test
    void when_they_changed_nothing_mine_stays_and_nothing_is_taken() {
        hold(each -> assertThat(Merge.of(each.base(), each.mine(), each.base()))
                .isEqualTo(new Merge(each.mine(), List.of(), new Differences(List.of()))));
    }

    @Test
    void when_I_changed_nothing_theirs_is_taken_as_it_is() {
        hold(each -> {
            Merge merge = Merge.of(each.base(), each.base(), each.theirs());
            assertSame(merge.job(), each.theirs());
            assertThat(merge.conflicts()).isEmpty();
            assertThat(merge.taken()).isEqualTo(Differences.between(each.base(), each.theirs()));
        });
    }

    @Test
    void equal_changes_are_no_conflict() {
        hold(each -> assertThat(Merge.of(each.base(), each.mine(), each.mine()))
                .isEqualTo(new Merge(each.mine(), List.of(), new Differences(List.of()))));
    }

    @Test
    void it_does_not_matter_who_brings_whose_changes_in_except_in_conflicts() {
        int[] without = {0};
        hold(each -> {
            Merge one = Merge.of(each.base(), each.mine(), each.theirs());
            Merge other = Merge.of(each.base(), each.theirs(), each.mine());
            assertThat(other.conflicts())
                    .containsExactlyInAnyOrderElementsOf(one.conflicts().stream()
                            .map(c -> new Merge.Conflict(c.path(), c.base(), c.theirs(), c.mine()))
                            .toList());
            assertSame(giveWay(one), other.job());
            without[0] += one.conflicts().isEmpty() ? 1 : 0;
        });
        assertThat(without[0]).isBetween(CASES.size() / 20, CASES.size() * 19 / 20);
    }

    /** The merged version with every conflict decided the other way. */
    private static Written giveWay(Merge merge) {
        return new Differences(merge.conflicts().stream()
                        .map(conflict -> new Difference(conflict.path(), conflict.mine(), conflict.theirs()))
                        .toList())
                .applyTo(merge.job());
    }

    @Test
    void nothing_that_one_side_changed_is_lost_without_a_conflict() {
        hold(each -> {
            Merge merge = Merge.of(each.base(), each.mine(), each.theirs());
            assertKept(Differences.between(each.base(), each.mine()), merge);
            assertKept(Differences.between(each.base(), each.theirs()), merge);
        });
    }

    private static void assertKept(Differences changes, Merge merge) {
        for (Difference change : changes.all()) {
            boolean disputed = merge.conflicts().stream().anyMatch(each -> meet(each.path(), change.path()));
            assertThat(disputed || holds(find(merge.job(), change.path()), change.after()))
                    .as(change.toString())
                    .isTrue();
        }
    }

    /** Nothing but what was wanted; where a group was added, also what the other side added to it. */
    private static boolean holds(Optional<Written> found, Optional<Written> wanted) {
        List<Difference> between = Differences.between(found, wanted).all();
        return between.isEmpty()
                || between.stream()
                        .allMatch(each -> !each.path().isEmpty() && each.after().isEmpty());
    }

    @Test
    void nothing_comes_in_that_nobody_wrote() {
        hold(each -> {
            Merge merge = Merge.of(each.base(), each.mine(), each.theirs());
            for (Difference change :
                    Differences.between(each.base(), merge.job()).all()) {
                boolean mine = holds(change.after(), find(each.mine(), change.path()));
                boolean theirs = holds(change.after(), find(each.theirs(), change.path()));
                assertThat(mine || theirs).as(change.toString()).isTrue();
            }
        });
    }

    private static boolean meet(List<String> path, List<String> other) {
        int common = Math.min(path.size(), other.size());
        return path.subList(0, common).equals(other.subList(0, common));
    }

    private static Optional<Written> find(Written whole, List<String> path) {
        Optional<Written> found = Optional.of(whole);
        for (String name : path) {
            found = found.flatMap(inside -> Pieces.find(inside, name));
        }
        return found;
    }

    /** The order of lines in a group means nothing. */
    private static void assertSame(Written found, Written wanted) {
        assertThat(Differences.between(found, wanted).all()).isEmpty();
    }
}
