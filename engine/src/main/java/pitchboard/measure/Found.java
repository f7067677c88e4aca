package pitchboard.measure;

/** What somebody who looked found of a thing that has no measure. */
public enum Found implements Quantity {
    AMISS("not right"),
    RIGHT("right");

    private final String words;

    Found(String words) {
        this.words = words;
    }

    public static Found of(boolean right) {
        return right ? RIGHT : AMISS;
    }

    public String words() {
        return words;
    }
}
