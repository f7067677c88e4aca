package pitchboard.web.live;

/** The way to one page that listens; saying something may take long, or never come to an end. */
interface Line {
    void say(String event, String data);

    /** Shows that the line still stands. */
    void sign();

    boolean isCut();

    void cut();
}
