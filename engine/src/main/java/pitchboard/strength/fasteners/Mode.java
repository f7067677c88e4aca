package pitchboard.strength.fasteners;

/** How a joint with one fastener yields. */
public enum Mode {
    IM("Im", "the wood of the main member crushes"),
    IS("Is", "the wood of the side member crushes"),
    II("II", "the fastener turns stiffly, and both members crush at their faces"),
    IIIM("IIIm", "the fastener bends at one place, and the main member crushes"),
    IIIS("IIIs", "the fastener bends at one place, and the side member crushes"),
    IV("IV", "the fastener bends at two places");

    private final String symbol;
    private final String inWords;

    Mode(String symbol, String inWords) {
        this.symbol = symbol;
        this.inWords = inWords;
    }

    public String symbol() {
        return symbol;
    }

    public String inWords() {
        return inWords;
    }
}
