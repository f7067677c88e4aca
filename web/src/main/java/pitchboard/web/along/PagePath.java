package pitchboard.web.along;

import java.net.URI;

/** Where one file of the page says that another lies. */
final class PagePath {
    private PagePath() {}

    /**
     * The path of what a file refers to.
     *
     * @param from the file that refers, such as {@code /page/places/wood.js}
     * @param reference such as {@code ../say.js} or {@code /page/say.js}
     */
    static String resolve(String from, String reference) {
        return URI.create(from).resolve(reference).getPath();
    }
}
