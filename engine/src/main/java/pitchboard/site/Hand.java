package pitchboard.site;

/** The two hands of someone climbing. */
public enum Hand {
    LEFT("left"),
    RIGHT("right");

    private final String words;

    Hand(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
