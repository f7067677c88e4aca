package pitchboard.web.page;

import java.util.List;
import java.util.stream.Stream;

/** Measures whether a view fits its screen, and whether what is tapped fits a thumb. */
final class Fit {
    /** Of what sticks out sideways, except inside of what is meant to be pushed sideways. */
    private static final String TOO_WIDE = "const wide = document.documentElement.clientWidth;"
            + "const rooms = [document.scrollingElement, ...document.querySelectorAll('.place, dialog[open]')];"
            + "return rooms.filter(room => room.scrollWidth > room.clientWidth || room.getBoundingClientRect().right > wide + 0.5)"
            + ".map(room => `${room.className || room.localName}: ${room.scrollWidth} in ${room.clientWidth}`);";
    /**
     * At least 44 by 44, as criterion 2.5.5 of WCAG 2.1 wants. What a label holds is as large as the label. The dots of
     * the picture and its dimensions are not asked about: the list of stairs and the rows of the tape do the same.
     */
    private static final String TOO_SMALL =
            "const things = [...(document.querySelector('dialog[open]') ?? document).querySelectorAll("
                    + "'button, a, input, select, summary')].filter(one => one.checkVisibility());"
                    + "const area = one => (one.closest('label') ?? one).getBoundingClientRect();"
                    + "return things.filter(one => area(one).width < 43.9 || area(one).height < 43.9)"
                    + ".map(one => `${one.localName} ${one.ariaLabel ?? one.innerText}: ${area(one).width} x ${area(one).height}`);";

    private Fit() {}

    /** What does not fit at this moment, in words. */
    static List<String> faults(Page page) {
        return Stream.of(TOO_WIDE, TOO_SMALL)
                .flatMap(script -> ((List<?>) page.run(script)).stream())
                .map(String::valueOf)
                .toList();
    }
}
