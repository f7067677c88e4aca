package pitchboard.sheet.drafting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.TextBox;

final class CheckRulerTest {
    private final Draft draft = new Draft("test", "Test", new Box(0, 0, 300, 200));

    @Test
    void its_edges_are_100_millimetres_and_4_inches() {
        new CheckRuler(draft.pencil()).at(Spot.of(20, 20));
        List<Double> edges = draft.marks().stream()
                .filter(mark -> mark instanceof Mark.Line line && line.pen() == Pen.OUTLINE)
                .map(mark -> ((Mark.Line) mark).spots())
                .map(spots -> spots.get(0).distanceTo(spots.get(1)))
                .toList();
        assertThat(edges).containsExactly(100.0, 101.6);
    }

    @Test
    void everything_stays_within_what_it_says_it_takes_up() {
        new CheckRuler(draft.pencil()).at(Spot.of(20, 20));
        Box taken = new Box(20, 20, CheckRuler.WIDTH, CheckRuler.HEIGHT);
        for (Mark mark : draft.marks()) {
            if (mark instanceof Mark.Text text) {
                assertThat(taken.contains(TextBox.of(text).box()))
                        .as(text.reads())
                        .isTrue();
            } else if (mark instanceof Mark.Line line) {
                assertThat(line.spots()).allMatch(taken::contains);
            }
        }
    }
}
