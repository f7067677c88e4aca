package pitchboard.sheet.drafting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.TextBox;
import pitchboard.sheet.type.Typesetter;

final class DraftTest {
    private final Draft draft = new Draft("test", "Test", new Box(0, 0, 200, 100));

    private static Mark.Text word(double x, double y) {
        return Typesetter.line("stringer", Lettering.NOTE).at(PartRef.NONE, Spot.of(x, y), 0, Align.LEFT);
    }

    @Test
    void a_place_is_free_when_it_is_in_the_room_and_no_text_stands_there() {
        draft.add(word(50, 50));
        assertThat(draft.isFree(TextBox.of(word(55, 50)))).isFalse();
        assertThat(draft.isFree(TextBox.of(word(50, 60)))).isTrue();
        assertThat(draft.isFree(TextBox.of(word(195, 60)))).isFalse();
    }

    @Test
    void a_place_is_clear_when_no_line_runs_through_it() {
        draft.pencil().line(Pen.OUTLINE, Spot.of(0, 0), Spot.of(100, 100));
        assertThat(draft.isClear(Quad.of(new Box(40, 45, 10, 10)))).isFalse();
        assertThat(draft.isClear(Quad.of(new Box(10, 45, 10, 10)))).isTrue();
    }

    @Test
    void the_first_free_and_clear_place_wins_then_the_first_free_then_the_first() {
        draft.add(word(50, 50));
        draft.pencil().line(Pen.OUTLINE, Spot.of(0, 69), Spot.of(200, 69));
        Mark.Text taken = word(52, 50);
        Mark.Text crossed = word(50, 70);
        Mark.Text clear = word(50, 90);
        assertThat(draft.firstFree(List.of(taken, crossed, clear))).isEqualTo(clear);
        assertThat(draft.firstFree(List.of(taken, crossed))).isEqualTo(crossed);
        assertThat(draft.firstFree(List.of(taken))).isEqualTo(taken);
    }

    @Test
    void every_mark_of_a_pencil_knows_its_part() {
        Pencil pencil = draft.pencil(PartRef.of("sole"));
        pencil.line(Pen.OUTLINE, Spot.of(0, 0), Spot.of(1, 1));
        pencil.circle(Pen.THIN, Spot.of(5, 5), 2);
        pencil.arc(Pen.THIN, Spot.of(5, 5), 2, 0, 90);
        pencil.text(Spot.of(10, 10), "sole", Lettering.NOTE, Align.LEFT);
        pencil.paragraph(Spot.of(10, 20), 50, "under the foot", Lettering.NOTE);
        new Hatch(pencil).inside(new Box(30, 30, 10, 10).corners(), Material.TIMBER_ACROSS);
        new Notes(pencil, 40).onEdge(Spot.of(60, 60), Spot.of(70, 50), "screwed");
        assertThat(draft.marks()).isNotEmpty().extracting(Mark::of).containsOnly(PartRef.of("sole"));
    }

    @Test
    void a_note_takes_the_first_shoulder_where_its_text_stands_free() {
        draft.add(word(74, 51));
        new Notes(draft.pencil(), 40).onEdge(Spot.of(60, 60), List.of(Spot.of(70, 50), Spot.of(70, 30)), "stringer");
        Mark.Line leader = (Mark.Line) draft.marks().get(1);
        assertThat(leader.spots()).containsExactly(Spot.of(60, 60), Spot.of(70, 30), Spot.of(73, 30));
    }
}
