package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Nothing is too wide for a small screen, and nothing too small for a thumb. */
final class SizesTest extends Visit {
    static Stream<Screen> small() {
        return Stream.of(Screen.NARROWEST, Screen.TWICE_AS_LARGE);
    }

    @ParameterizedTest
    @MethodSource("small")
    void no_view_has_to_be_pushed_sideways_and_thumbs_find_everything(Screen screen) throws Exception {
        page.on(screen);
        openExample("tape");
        SoftAssertions all = new SoftAssertions();
        new Views(page).each(view -> all.assertThat(Fit.faults(page)).as(view).isEmpty());
        all.assertAll();
    }

    @Test
    void the_dots_of_the_picture_can_be_had_from_a_list_too() throws Exception {
        openExample("stair");
        page.until(
                "return document.querySelector('.dots')?.nextElementSibling.querySelectorAll('button.row').length > 1");
        assertThat(Fit.faults(page)).isEmpty();
    }
}
