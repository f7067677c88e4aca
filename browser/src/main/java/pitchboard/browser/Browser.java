package pitchboard.browser;

import org.teavm.jso.JSExport;

/** The way in from the page. */
public final class Browser {
    private Browser() {}

    /** Does nothing: what is compiled for the browser needs a beginning. */
    public static void main(String[] args) {}

    /** Requests and answers are explained in docs/browser.md. */
    @JSExport
    public static String run(String request) {
        return Answers.to(request);
    }
}
