package pitchboard.sheet.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.type.TextBox;

final class TableTest {
    private static final Box ROOM = new Box(10, 10, 120, 50);

    private static Table table() {
        return Table.of(Column.left("Mark", 20).bold(), Column.right("From datum", 30), Column.rest("What to do"));
    }

    private static List<String> texts(Draft draft) {
        return draft.marks().stream()
                .filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).reads())
                .toList();
    }

    private static Draft draft() {
        return new Draft("test", "Test", ROOM);
    }

    @Test
    void a_row_is_set_under_its_head_each_cell_at_its_columns_edge() {
        Draft draft = draft();
        table().row("M1", "1′-0 5⁄8″", "square the cut").draw(draft, ROOM, 0);
        assertThat(texts(draft))
                .containsExactly("Mark", "From datum", "What to do", "M1", "1′-0 5⁄8″", "square the cut");
        Mark.Text right = (Mark.Text) draft.marks().stream()
                .filter(mark -> mark instanceof Mark.Text text && text.reads().startsWith("1′"))
                .findFirst()
                .orElseThrow();
        assertThat(TextBox.of(right).box().right()).isBetween(57.5, 60.0);
    }

    @Test
    void columns_that_share_the_rest_fill_the_box() {
        Draft draft = draft();
        table().row("a", "b", "c").draw(draft, ROOM, 0);
        assertThat(draft.marks().stream()
                        .filter(mark -> mark instanceof Mark.Line line && line.pen() == Pen.RULE)
                        .map(mark -> ((Mark.Line) mark).spots().get(1).x()))
                .containsOnly(130.0);
    }

    @Test
    void a_long_cell_wraps_and_its_row_grows() {
        Table one = table().row("M1", "7″", "short");
        Table two =
                table().row("M1", "7″", "a long sentence that cannot stand in one line of the narrow column it is in");
        assertThat(two.height(120)).isGreaterThan(one.height(120) + 3);
    }

    @Test
    void rows_that_do_not_fit_go_on_in_the_next_box_under_the_same_head() {
        Table table = table();
        for (int i = 1; i <= 25; i++) {
            table.row("M" + i, i + "″", "square the cut");
        }
        List<Draft> pages = table.over(page -> draft());
        assertThat(pages.size()).isGreaterThan(2);
        List<String> marks = new ArrayList<>();
        for (Draft page : pages) {
            assertThat(texts(page)).contains("From datum");
            texts(page).stream().filter(text -> text.matches("M\\d+")).forEach(marks::add);
            page.marks().stream()
                    .filter(Mark.Text.class::isInstance)
                    .forEach(text -> assertThat(
                                    ROOM.contains(TextBox.of((Mark.Text) text).box()))
                            .isTrue());
        }
        List<String> all = new ArrayList<>();
        for (int i = 1; i <= 25; i++) {
            all.add("M" + i);
        }
        assertThat(marks).isEqualTo(all);
    }

    @Test
    void a_heading_never_stands_alone_at_the_foot_of_a_page() {
        for (int before = 1; before < 10; before++) {
            Table table = table();
            for (int i = 0; i < before; i++) {
                table.row("M" + i, "", "");
            }
            table.heading("Right stringer").row("M99", "", "");
            Draft first = draft();
            int next = table.draw(first, ROOM, 0).next();
            boolean headingIsOnFirst = texts(first).contains("Right stringer");
            assertThat(headingIsOnFirst).as("after %s rows", before).isEqualTo(next > before + 1);
        }
    }

    @Test
    void a_row_taller_than_the_box_is_drawn_all_the_same_so_that_paging_ends() {
        Table table = table().row("a", "b", "word ".repeat(200)).row("c", "d", "e");
        assertThat(table.over(page -> draft())).hasSize(2);
    }

    @Test
    void the_height_foretold_is_the_height_drawn() {
        Table table = table().heading("Left").row("a", "b", "c").row("a", "b", "long ".repeat(20));
        Table.Drawn drawn = table.draw(draft(), ROOM, 0);
        assertThat(drawn.bottom() - ROOM.top()).isEqualTo(table.height(ROOM.width()), within(1e-9));
    }

    @Test
    void a_table_without_heads_and_without_rows_is_a_rule() {
        Table empty = Table.of(Column.left("", 20));
        assertThat(empty.over(page -> draft())).hasSize(1);
    }

    @Test
    void a_check_box_column_draws_a_box_for_the_pencil() {
        Draft draft = draft();
        Table.of(Column.checkBox("", 30), Column.rest("Check"))
                .row("", "diagonals")
                .draw(draft, ROOM, 0);
        assertThat(draft.marks())
                .anyMatch(mark -> mark instanceof Mark.Shape shape
                        && shape.pen().filter(Pen.PENCIL::equals).isPresent()
                        && shape.spots().size() == 4);
    }

    @Test
    void cells_know_the_part_of_their_row() {
        Draft draft = draft();
        table().row(PartRef.of("sole"), List.of("S", "1", "2")).draw(draft, ROOM, 0);
        assertThat(draft.marks().stream()
                        .filter(mark -> mark.of().equals(PartRef.of("sole")))
                        .count())
                .isEqualTo(3);
    }

    @Test
    void a_row_must_have_a_cell_for_each_column() {
        assertThatThrownBy(() -> table().row("a", "b")).hasMessage("2 cells under 3 columns");
    }
}
