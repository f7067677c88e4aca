package pitchboard.sheet.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pitchboard.Rebuilt;
import pitchboard.StairFixtures;
import pitchboard.brief.Paper;
import pitchboard.brief.Support;
import pitchboard.brief.Title;
import pitchboard.carry.SecondLook;
import pitchboard.carry.elements.ByElements;
import pitchboard.measure.Length;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.Spot;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.frame.TitleBlock;
import pitchboard.sheet.inspection.SheetInspection;
import pitchboard.sheet.strength.ElementsSheet;
import pitchboard.stair.Stair;
import pitchboard.strength.elements.mesh.Polygon;

/** The picture of the stress in a stringer. */
final class ElementsSheetTest {
    private static final Rulebook BOOK = Books.findByName("IRC 2021").orElseThrow();
    private static final Stair STAIR = StairFixtures.stair("risers 9; total rise 67 1/2 in");
    private static final Sheet SHEET = sheet(STAIR);
    private static final ByElements FOUND =
            SecondLook.at(STAIR, BOOK).elements().orThrow();

    private static Sheet sheet(Stair stair) {
        Title title = stair.brief().title();
        Paper paper = stair.brief().paper();
        Frame frame = new Frame(paper, new TitleBlock(title, "IRC 2021", "ABCD-EFGH", "Local code decides."));
        return frame.bind(ElementsSheet.of(stair, BOOK, frame)).get(0);
    }

    private static List<String> texts(Sheet sheet) {
        return sheet.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).reads())
                .toList();
    }

    private static Stream<Mark.Line> strokes(Pen pen) {
        return SHEET.marks().stream()
                .filter(mark -> mark instanceof Mark.Line line && line.pen() == pen)
                .map(Mark.Line.class::cast);
    }

    @Test
    void nothing_leaves_the_border_and_no_text_lies_on_another() {
        for (String stair : List.of(
                "risers 9; total rise 67 1/2 in",
                "risers 3; total rise 22 1/2 in",
                "risers 2; total rise 15 in; head flush",
                "risers 18; total rise 144 in; run 8 in",
                "risers 15; total rise 60 in; run 15 in")) {
            assertThat(SheetInspection.complaints(sheet(StairFixtures.stair(stair))))
                    .as(stair)
                    .isEmpty();
        }
    }

    private static Stair onPosts(String words, Length at) {
        Stair stair = StairFixtures.stair(words);
        Support post = new Support(at, Length.inches(3, 1, 2), Length.inches(3, 1, 2), Optional.empty());
        return new Stair(stair.site(), Rebuilt.with(stair.brief(), "support", Optional.of(post)), stair.flight());
    }

    @Test
    void on_posts_nothing_leaves_the_border_and_no_text_lies_on_another() {
        for (int inches : List.of(45, 80)) {
            Sheet sheet = sheet(onPosts("risers 14; total rise 105 in", Length.inches(inches)));
            assertThat(SheetInspection.complaints(sheet)).as("at " + inches).isEmpty();
        }
    }

    /** Each with a number of pounds below its arrow, and the post as what it is. */
    @Test
    void on_posts_three_reactions_and_the_post_are_drawn() {
        Sheet sheet = sheet(onPosts("risers 14; total rise 105 in", Length.inches(62)));
        assertThat(texts(sheet)).filteredOn(text -> text.matches("[0-9.]+ lb")).hasSize(3);
        assertThat(String.join(" ", texts(sheet)))
                .contains("runs on over the posts")
                .contains("The compact rule says nothing of it");
        long posts = sheet.marks().stream()
                .filter(mark -> mark instanceof Mark.Shape shape
                        && shape.fill().isPresent()
                        && shape.spots().size() == 4
                        && isOfAPost(shape.spots()))
                .count();
        assertThat(posts).isEqualTo(1);
    }

    private static boolean isOfAPost(List<Spot> spots) {
        return Math.abs(spots.get(2).y() - spots.get(3).y()) < 1e-9
                && Math.abs(spots.get(0).x() - spots.get(3).x()) < 1e-9
                && spots.get(0).y() > spots.get(1).y();
    }

    @Test
    void it_tells_agreement_sag_stress_meshes_wood_and_whose_word_goes_first() {
        String all = String.join(" ", texts(SHEET));
        assertThat(all)
                .contains("It agrees with the throat")
                .contains("Meshes of six-node triangles")
                .contains("unknowns")
                .contains("they lead to")
                .contains("no wood of this group is tabled")
                .contains("never in its place")
                .contains("licensed engineer")
                .contains("stretched most")
                .containsPattern("drawn [0-9]+ times larger");
        assertThat(texts(SHEET)).filteredOn("A"::equals).hasSize(2);
    }

    /** In every direction: along the grain where it is stretched, across it where it is pressed, and some of either. */
    @Test
    void strokes_run_along_the_grain_or_across_it() {
        double pitch = Math.toDegrees(Math.atan2(7.5, 10));
        long along = strokes(Pen.THIN).filter(line -> isTurned(line, pitch)).count();
        long across =
                strokes(Pen.THIN).filter(line -> isTurned(line, pitch + 90)).count();
        assertThat(along).isGreaterThan(5);
        assertThat(across).isGreaterThan(50);
    }

    private static boolean isTurned(Mark.Line line, double degrees) {
        double turn = line.spots().get(0).directionTo(line.spots().get(1)) - degrees;
        return Math.abs(Math.sin(Math.toRadians(turn))) < 1e-3;
    }

    /** A circle of an inch around every sharp corner, covering the strokes. */
    @Test
    void every_inner_corner_is_left_open() {
        long corners = new Polygon(FOUND.plate().outline()).inwardCorners().size();
        double radius = SHEET.marks().stream()
                .filter(mark -> mark instanceof Mark.Disc disc && disc.fill().isPresent())
                .mapToDouble(mark -> ((Mark.Disc) mark).radius())
                .max()
                .orElseThrow();
        assertThat(SHEET.marks())
                .filteredOn(mark -> mark instanceof Mark.Disc disc
                        && disc.fill().isPresent()
                        && Math.abs(disc.radius() - radius) < 1e-9)
                .hasSize((int) corners);
    }

    /** The deflected outline lies lower on paper than the outline it left, by the factor that is told. */
    @Test
    void the_sag_is_drawn_as_many_times_larger_as_is_told() {
        String told = texts(SHEET).stream()
                .filter(text -> text.startsWith("How it sags"))
                .findFirst()
                .orElseThrow();
        double times = Double.parseDouble(told.replaceAll("\\D", ""));
        List<Mark.Shape> shapes = SHEET.marks().stream()
                .filter(Mark.Shape.class::isInstance)
                .map(Mark.Shape.class::cast)
                .toList();
        Mark.Shape still = shapes.stream()
                .filter(shape -> shape.fill().isPresent()
                        && shape.spots().size() == FOUND.plate().outline().size())
                .findFirst()
                .orElseThrow();
        Mark.Shape moved = shapes.stream()
                .filter(shape -> shape.spots().size() > still.spots().size())
                .findFirst()
                .orElseThrow();
        double factor = still.spots().get(0).distanceTo(still.spots().get(1))
                / FOUND.plate()
                        .outline()
                        .get(0)
                        .distanceTo(FOUND.plate().outline().get(1));
        double most = moved.spots().stream()
                .mapToDouble(spot -> below(still.spots(), spot))
                .max()
                .orElseThrow();
        // A board on a slope sags square to itself, so that the plumb way to its old edge is longer than the plumb
        // fall.
        double fall = FOUND.solved().fallMm().value() * (1 + 0.75 * 0.75);
        assertThat(most / factor / times).isCloseTo(fall, within(0.06 * fall));
    }

    /** How far a spot lies plumb below the lower edge of a board, which joins its last two corners. */
    private static double below(List<Spot> outline, Spot spot) {
        Spot head = outline.get(outline.size() - 2);
        Spot heel = outline.get(outline.size() - 1);
        double share = (spot.x() - heel.x()) / (head.x() - heel.x());
        return spot.y() - (heel.y() + share * (head.y() - heel.y()));
    }
}
