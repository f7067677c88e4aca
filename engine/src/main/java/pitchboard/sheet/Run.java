package pitchboard.sheet;

/**
 * Letters of one size on one baseline, within a {@link Mark.Text}.
 *
 * @param across millimetres along the baseline from the text's spot to the first letter
 * @param up millimetres from the text's baseline up to this one's
 * @param em size of the type in millimetres
 * @param width the advance of all letters in millimetres
 */
public record Run(String letters, double across, double up, double em, Face face, double width) {
    public Run {
        across = Spot.settled(across);
        up = Spot.settled(up);
        em = Spot.settled(em);
        width = Spot.settled(width);
    }
}
