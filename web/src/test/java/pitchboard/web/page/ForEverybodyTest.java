package pitchboard.web.page;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.OutputType;

/**
 * Every view is good for everybody: by what of WCAG 2.2 AA a machine can judge, by day and by night on a phone and by day
 * on a desktop, whose night has no colours of its own. A picture of each is kept in {@code target/screenshots} for people
 * to judge the rest.
 */
final class ForEverybodyTest extends Visit {
    private static final Path PICTURES = Path.of("target", "screenshots");

    static Stream<Arguments> ways() {
        return Stream.of(Screen.PHONE, Screen.DESKTOP)
                .flatMap(screen -> Stream.of("light", "dark").map(theme -> Arguments.of(screen, theme)));
    }

    @ParameterizedTest
    @MethodSource("ways")
    void no_view_breaks_a_rule(Screen screen, String theme) throws Exception {
        page.prefers("prefers-color-scheme", theme);
        page.on(screen);
        openExample("tape");
        SoftAssertions all = new SoftAssertions();
        Axe axe = new Axe();
        new Views(page).each(view -> {
            keepPicture(view + " " + screen + " " + theme);
            if (screen.equals(Screen.PHONE) || theme.equals("light")) {
                all.assertThat(axe.violations(page)).as(view).isEmpty();
                all.assertThat(Fit.faults(page)).as(view).isEmpty();
            }
        });
        all.assertAll();
    }

    private void keepPicture(String name) throws Exception {
        Files.createDirectories(PICTURES);
        page.until("return document.getAnimations().every(one => one.playState === 'finished')");
        Files.write(PICTURES.resolve(name + ".png"), page.driver().getScreenshotAs(OutputType.BYTES));
    }
}
