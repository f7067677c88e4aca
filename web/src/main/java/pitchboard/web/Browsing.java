package pitchboard.web;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.net.URI;

/** Opens the browser where there is one. Where there is none, the address on the console has to do. */
final class Browsing {
    private Browsing() {}

    static void open(String address) {
        try {
            if (!GraphicsEnvironment.isHeadless()
                    && Desktop.isDesktopSupported()
                    && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                Desktop.getDesktop().browse(URI.create(address));
            } else if (System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null) {
                new ProcessBuilder("xdg-open", address)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
            }
        } catch (IOException | UnsupportedOperationException | SecurityException | LinkageError none) {
            System.getLogger("pitchboard").log(System.Logger.Level.DEBUG, "no browser", none);
        }
    }
}
