package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;

/** Two fingers bring the drawing closer, one moves it, a button shows all of it again. */
final class LookingCloselyTest extends Visit {
    private static final String SEEN =
            "return document.querySelector('.lens svg').getAttribute('viewBox').split(/[ ,]+/).map(Number)";

    private double[] seen() {
        return ((List<?>) page.run(SEEN))
                .stream().mapToDouble(each -> ((Number) each).doubleValue()).toArray();
    }

    private int[] middle(String selector) {
        List<?> at = (List<?>) page.run(
                "const frame = document.querySelector(given[0]).getBoundingClientRect();"
                        + "return [Math.round(frame.x + frame.width / 2), Math.round(frame.y + frame.height / 2)]",
                selector);
        return at.stream().mapToInt(each -> ((Number) each).intValue()).toArray();
    }

    private static Sequence finger(String name, int[] from, int[] to) {
        PointerInput finger = new PointerInput(PointerInput.Kind.TOUCH, name);
        return new Sequence(finger, 0)
                .addAction(finger.createPointerMove(Duration.ZERO, PointerInput.Origin.viewport(), from[0], from[1]))
                .addAction(finger.createPointerDown(PointerInput.MouseButton.LEFT.asArg()))
                .addAction(
                        finger.createPointerMove(Duration.ofMillis(120), PointerInput.Origin.viewport(), to[0], to[1]))
                .addAction(finger.createPointerUp(PointerInput.MouseButton.LEFT.asArg()));
    }

    private static int[] beside(int[] at, int across) {
        return new int[] {at[0] + across, at[1]};
    }

    @Test
    void two_fingers_bring_it_closer_one_moves_it_and_the_whole_comes_back() throws Exception {
        openExample("stair");
        page.until("return document.querySelector('.lens svg [role=button]')");
        double[] whole = seen();
        int[] at = middle(".lens");
        page.driver()
                .perform(List.of(
                        finger("thumb", beside(at, -30), beside(at, -120)),
                        finger("forefinger", beside(at, 30), beside(at, 120))));
        double[] closer = seen();
        assertThat(closer[2]).isLessThan(whole[2] / 2);
        assertThat(closer[2] / closer[3]).isCloseTo(whole[2] / whole[3], within(0.01));

        page.driver().perform(List.of(finger("forefinger", at, beside(at, 60))));
        double[] moved = seen();
        assertThat(moved[0]).isLessThan(closer[0]);
        assertThat(moved[2]).isEqualTo(closer[2]);
        assertThat(page.has("dialog[open]")).isFalse();

        page.tap("The whole drawing");
        assertThat(seen()).isEqualTo(whole);
    }

    @Test
    void a_tap_on_a_dimension_asks_for_its_measure() throws Exception {
        openExample("stair");
        page.until("return document.querySelector('.lens svg [role=button]')");
        String field = (String) page.run("return document.querySelector('.lens [data-field]').dataset.field");
        int[] at = middle(".lens [data-field] text");
        page.driver().perform(List.of(finger("forefinger", at, at)));
        page.until("return document.querySelector('dialog[open]')");
        assertThat(page.run("return (await import('/page/state.js')).state.asking.field"))
                .isEqualTo(field);
    }
}
