package pitchboard.rules;

/**
 * What would settle a verdict that cannot be told.
 *
 * @param item which of several, counted from 1; 0 when there is only one
 */
public record Unknown(Fact fact, int item) {
    static Unknown of(Fact fact) {
        return new Unknown(fact, 0);
    }
}
