package pitchboard.sheet.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.GuardedStairs;
import pitchboard.Rebuilt;
import pitchboard.brief.Infill;
import pitchboard.brief.Posts;
import pitchboard.carry.Carrier;
import pitchboard.measure.Length;
import pitchboard.parts.Part;
import pitchboard.parts.PartMaker;
import pitchboard.parts.Worksheet;
import pitchboard.rules.Checker;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.inspection.SheetInspection;
import pitchboard.sheet.pictures.Pictures;
import pitchboard.sheet.subject.Subject;
import pitchboard.stair.Stair;

/** The sheets and the picture of a guard that is laid out. */
final class GuardSheetsTest {
    private static Stair of(Posts.Fixing fixing, Posts.Top top, Infill infill) {
        return GuardedStairs.stair("left open", build -> {
            Posts posts = Rebuilt.with(Rebuilt.with(build.posts(), "fixing", fixing), "top", top);
            return Rebuilt.with(Rebuilt.with(build, "posts", posts), "infill", infill);
        });
    }

    static List<Stair> guards() {
        return List.of(
                of(new Posts.Fixing.Lapped(), Posts.Top.SQUARE, GuardedStairs.balusters(Length.inches(4))),
                of(
                        new Posts.Fixing.Notched(Length.inches(1, 1, 2)),
                        Posts.Top.UNDER_RAIL,
                        GuardedStairs.boards(Length.inches(5, 1, 2), Length.inches(4))),
                of(new Posts.Fixing.SetOn(), Posts.Top.SQUARE, new Infill.Panels(Length.inches(0, 1, 2))));
    }

    private static Subject subject(Stair stair) {
        Rulebook book = Books.all().get(1);
        return new Subject(
                stair,
                PartMaker.partsOf(stair),
                Checker.check(stair, book),
                Worksheet.of(stair),
                Carrier.check(stair, book, List.of()),
                book,
                "ABCD-EFGH");
    }

    private static Stream<PartRef> drawnOn(Sheet sheet) {
        return sheet.marks().stream().map(Mark::of);
    }

    @ParameterizedTest
    @MethodSource("guards")
    void no_text_overlaps_another_or_leaves_the_border(Stair stair) {
        assertThat(Draughtsman.draw(subject(stair)).stream()
                        .flatMap(sheet -> SheetInspection.complaints(sheet).stream()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("guards")
    void the_picture_keeps_to_its_page(Stair stair) {
        assertThat(Pictures.draw(subject(stair), Pictures.STAIR::equals).stream()
                        .flatMap(picture -> SheetInspection.complaints(picture).stream()))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("guards")
    void a_guard_has_its_three_sheets(Stair stair) {
        assertThat(Draughtsman.draw(subject(stair))).extracting(Sheet::id).contains("rails", "posts", "infill");
    }

    @Test
    void without_one_there_are_none() {
        Stair stair = GuardedStairs.stair("right wall", build -> build);
        assertThat(Draughtsman.draw(subject(stair))).extracting(Sheet::id).doesNotContain("rails", "posts", "infill");
    }

    /** Pieces of several lengths are drawn under the mark they share. */
    @ParameterizedTest
    @MethodSource("guards")
    void every_piece_of_the_guard_is_on_a_drawing(Stair stair) {
        Subject subject = subject(stair);
        Sheet rails = Draughtsman.draw(subject).stream()
                .filter(sheet -> sheet.id().equals("rails"))
                .findFirst()
                .orElseThrow();
        List<String> drawn = drawnOn(rails).map(PartRef::id).distinct().toList();
        assertThat(subject.parts().stream().map(Part::id).map(id -> id.mark().replaceAll("\\d", "")))
                .filteredOn(mark -> mark.startsWith("G") || mark.equals("HR"))
                .isNotEmpty()
                .allMatch(drawn::contains);
    }

    @Test
    void mirrored_sides_give_mirrored_parts() {
        List<Part> left = PartMaker.partsOf(GuardedStairs.stair("left open; right wall", build -> build));
        List<Part> right = PartMaker.partsOf(GuardedStairs.stair("left wall; right open", build -> build));
        assertThat(left).isEqualTo(right);
        List<Part> both = PartMaker.partsOf(GuardedStairs.stair("left open; right open", build -> build));
        assertThat(both.stream()
                        .filter(GuardSheetsTest::isOfGuard)
                        .mapToInt(Part::count)
                        .sum())
                .isEqualTo(2
                        * left.stream()
                                .filter(GuardSheetsTest::isOfGuard)
                                .mapToInt(Part::count)
                                .sum());
    }

    private static boolean isOfGuard(Part part) {
        return part.id().mark().startsWith("G");
    }
}
