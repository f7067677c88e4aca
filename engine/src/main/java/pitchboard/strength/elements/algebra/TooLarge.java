package pitchboard.strength.elements.algebra;

/** What was asked for would take more room than there is; the message says of what. */
public final class TooLarge extends RuntimeException {
    private static final long serialVersionUID = 1;

    public TooLarge(String message) {
        super(message);
    }
}
