package pitchboard.web.page;

import java.util.Map;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * What the page is looked at on.
 *
 * @param width in pixels of the page
 * @param height in pixels of the page
 * @param scale dots of the screen for each of them
 */
record Screen(int width, int height, int scale, boolean touched) {
    static final Screen PHONE = new Screen(390, 844, 2, true);
    static final Screen DESKTOP = new Screen(1280, 800, 1, false);
    /** The narrowest that WCAG 2.2 asks for, criterion 1.4.10. */
    static final Screen NARROWEST = new Screen(320, 640, 2, true);
    /** A window of 1280 × 800 at twice its size, criterion 1.4.4 of WCAG 2.2. */
    static final Screen TWICE_AS_LARGE = new Screen(640, 400, 2, false);

    void use(ChromeDriver driver) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", scale, "mobile", touched));
        driver.executeCdpCommand(
                "Emulation.setTouchEmulationEnabled", Map.of("enabled", touched, "maxTouchPoints", touched ? 5 : 1));
    }

    @Override
    public String toString() {
        return width + "x" + height;
    }
}
