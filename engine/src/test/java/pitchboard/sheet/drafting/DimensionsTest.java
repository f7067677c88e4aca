package pitchboard.sheet.drafting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.TextBox;

final class DimensionsTest {
    private final Draft draft = new Draft("test", "Test", new Box(0, 0, 300, 200));
    private final Dimensions dimensions = new Dimensions(
            draft.pencil(PartRef.of("tread")), length -> length.inMm().floor() + " mm");

    private static Station station(long mm, double x, double y) {
        return Station.of(Length.mm(mm), Spot.of(x, y));
    }

    private List<Mark.Dimension> drawn() {
        return draft.marks().stream().map(Mark.Dimension.class::cast).toList();
    }

    private static List<Mark.Line> lines(Mark.Dimension dimension, Pen pen) {
        return dimension.strokes().stream()
                .map(Mark.Line.class::cast)
                .filter(line -> line.pen() == pen)
                .toList();
    }

    @Test
    void a_level_dimension_has_its_ticks_under_the_stations_and_says_the_exact_difference() {
        dimensions.level(50, station(0, 20, 30), station(254, 120, 40));
        Mark.Dimension dimension = drawn().get(0);
        assertThat(dimension.of()).isEqualTo(PartRef.of("tread"));
        assertThat(dimension.says()).isEqualTo(Length.mm(254));
        assertThat(dimension.label().reads()).isEqualTo("254 mm");
        assertThat(lines(dimension, Pen.TICK))
                .extracting(line -> line.spots().get(0).midTo(line.spots().get(1)))
                .containsExactly(Spot.of(20, 50), Spot.of(120, 50));
    }

    @Test
    void ticks_are_an_eighth_of_an_inch_and_slope_at_45_degrees() {
        dimensions.level(50, station(0, 20, 30), station(254, 120, 40));
        Mark.Line tick = lines(drawn().get(0), Pen.TICK).get(0);
        assertThat(tick.spots().get(0).distanceTo(tick.spots().get(1))).isEqualTo(25.4 / 8, within(1e-3));
        assertThat(tick.spots().get(0).directionTo(tick.spots().get(1))).isEqualTo(45, within(1e-2));
    }

    @Test
    void an_extension_line_starts_a_sixteenth_off_the_object_and_passes_the_line_by_an_eighth() {
        dimensions.level(50, station(0, 20, 30), station(254, 120, 40));
        assertThat(lines(drawn().get(0), Pen.DIMENSION))
                .extracting(Mark.Line::spots)
                .contains(
                        List.of(Spot.of(20, 30 + 25.4 / 16), Spot.of(20, 50 + 25.4 / 8)),
                        List.of(Spot.of(120, 40 + 25.4 / 16), Spot.of(120, 50 + 25.4 / 8)));
    }

    @Test
    void a_label_with_room_stands_over_the_middle_of_its_gap() {
        dimensions.level(50, station(0, 20, 30), station(254, 120, 40));
        Box box = TextBox.of(drawn().get(0).label()).box();
        assertThat(box.centre().x()).isEqualTo(70, within(1e-3));
        assertThat(box.bottom()).isBetween(48.5, 50.0);
    }

    @Test
    void a_plumb_label_reads_from_the_right() {
        dimensions.plumb(150, station(0, 120, 100), station(195, 120, 40));
        Mark.Text label = drawn().get(0).label();
        assertThat(label.turn()).isEqualTo(90);
        assertThat(TextBox.of(label).box().right()).isBetween(148.5, 150.0);
    }

    @Test
    void a_chain_has_one_dimension_for_each_gap_and_the_overall_one_outside() {
        dimensions.levelWithOverall(
                60, List.of(station(0, 20, 30), station(254, 60, 30), station(508, 100, 30), station(700, 130, 30)));
        assertThat(drawn())
                .extracting(Mark.Dimension::says)
                .containsExactly(Length.mm(700), Length.mm(254), Length.mm(254), Length.mm(192));
        assertThat(lines(drawn().get(0), Pen.TICK)
                        .get(0)
                        .spots()
                        .get(0)
                        .midTo(lines(drawn().get(0), Pen.TICK).get(0).spots().get(1)))
                .isEqualTo(Spot.of(20, 60 + Dimensions.STRING_GAP));
    }

    @Test
    void neighbours_in_a_chain_share_one_tick() {
        dimensions.level(60, station(0, 20, 30), station(254, 60, 30), station(508, 100, 30));
        assertThat(drawn())
                .extracting(dimension -> lines(dimension, Pen.TICK).size())
                .containsExactly(2, 1);
    }

    @Test
    void stations_may_come_in_any_order() {
        dimensions.level(60, station(508, 100, 30), station(0, 20, 30), station(254, 60, 30));
        assertThat(drawn()).extracting(Mark.Dimension::says).containsExactly(Length.mm(254), Length.mm(254));
    }

    @Test
    void a_dimension_along_a_slope_lies_parallel_to_it_and_square_to_its_extension_lines() {
        Pitch pitch = Pitch.of(Length.mm(3), Length.mm(4));
        dimensions.sloping(
                10,
                Station.of(Length.ZERO, Spot.of(50, 150)),
                Station.of(pitch.alongForLevel(Length.mm(80)), Spot.of(130, 90)));
        Mark.Dimension dimension = drawn().get(0);
        assertThat(dimension.says()).isEqualTo(Length.mm(100));
        assertThat(dimension.label().turn()).isEqualTo(36.8699, within(1e-3));
        // Ten millimetres square to the slope, to the left of the way up: (-6, -8) from each station.
        assertThat(lines(dimension, Pen.TICK)
                        .get(1)
                        .spots()
                        .get(0)
                        .midTo(lines(dimension, Pen.TICK).get(1).spots().get(1)))
                .isEqualTo(Spot.of(124, 82));
    }

    @Test
    void a_label_without_room_goes_beside_the_last_tick_on_the_lengthened_line() {
        dimensions.level(50, station(0, 20, 30), station(5, 25, 30));
        Mark.Dimension dimension = drawn().get(0);
        Box box = TextBox.of(dimension.label()).box();
        assertThat(box.left()).isGreaterThan(26);
        assertThat(lines(dimension, Pen.DIMENSION))
                .anySatisfy(line -> assertThat(line.spots().get(1).x()).isGreaterThanOrEqualTo(box.right()));
    }

    @Test
    void a_label_without_room_in_the_middle_of_a_chain_stands_off_the_line_on_a_leader() {
        dimensions.level(50, station(0, 20, 30), station(50, 70, 30), station(53, 73, 30), station(100, 120, 30));
        Mark.Dimension narrow = drawn().get(1);
        Quad label = TextBox.of(narrow.label());
        assertThat(label.box().centre().x()).isEqualTo(71.5, within(1e-3));
        assertThat(lines(narrow, Pen.DIMENSION))
                .anySatisfy(line -> assertThat(line.spots().get(0)).isEqualTo(Spot.of(71.5, 50)));
    }

    @Test
    void no_two_labels_of_a_crowded_chain_overlap() {
        List<Station> crowded = new ArrayList<>();
        for (int i = 0; i <= 12; i++) {
            crowded.add(station(i * 4L, 100 + i * 4.0, 100));
        }
        dimensions.levelWithOverall(120, crowded);
        List<Quad> labels =
                drawn().stream().map(each -> TextBox.of(each.label())).toList();
        for (int i = 0; i < labels.size(); i++) {
            for (int j = i + 1; j < labels.size(); j++) {
                assertThat(labels.get(i).overlaps(labels.get(j)))
                        .as(i + " and " + j)
                        .isFalse();
            }
        }
    }

    @Test
    void a_label_keeps_off_text_that_is_already_there() {
        draft.pencil().text(Spot.of(70, 48.9), "something", Lettering.NOTE, Align.CENTRE);
        dimensions.level(50, station(0, 20, 30), station(254, 120, 30));
        Mark.Dimension dimension = (Mark.Dimension) draft.marks().get(1);
        Mark.Text before = (Mark.Text) draft.marks().get(0);
        assertThat(TextBox.of(dimension.label()).overlaps(TextBox.of(before))).isFalse();
    }

    @Test
    void an_angle_is_an_arc_with_a_tick_at_each_leg_and_its_label_outside() {
        Pitch pitch = Pitch.of(Length.mm(3), Length.mm(4));
        new AngleDimension(draft.pencil()).at(Spot.of(100, 100), 0, pitch.degrees(), 30, pitch, "36.9°");
        Mark.Dimension dimension = drawn().get(0);
        assertThat(dimension.says()).isEqualTo(pitch);
        assertThat(dimension.strokes().get(0))
                .isEqualTo(new Mark.Arc(PartRef.NONE, Spot.of(100, 100), 30, 0, pitch.degrees(), Pen.DIMENSION));
        assertThat(dimension.from()).isEqualTo(Spot.of(130, 100));
        assertThat(dimension.to()).isEqualTo(Spot.of(124, 82));
        assertThat(Spot.of(100, 100)
                        .distanceTo(TextBox.of(dimension.label()).box().centre()))
                .isGreaterThan(30);
    }
}
