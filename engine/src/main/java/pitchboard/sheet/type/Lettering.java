package pitchboard.sheet.type;

import pitchboard.sheet.Face;
import pitchboard.sheet.Spot;

/**
 * A size and weight of letters.
 *
 * @param em size of the type in millimetres; capitals are 0.686 of it
 */
public record Lettering(double em, Face face) {
    /** What is only looked up: sources, fingerprints, the title block's labels. Capitals 1.7 mm. */
    public static final Lettering SMALL = ofCapitals(1.7);
    /** Tables, notes and running text. Capitals 2.2 mm. */
    public static final Lettering NOTE = ofCapitals(2.2);
    /** Dimensions. Capitals 2.5 mm. */
    public static final Lettering DIMENSION = ofCapitals(2.5);
    /** The head of a table or of a group of notes. Capitals 2.2 mm, bold. */
    public static final Lettering HEAD = NOTE.bold();
    /** The name under a view. Capitals 3 mm, bold. */
    public static final Lettering NAME = ofCapitals(3).bold();
    /** The sheet's title. Capitals 4.2 mm, bold. */
    public static final Lettering TITLE = ofCapitals(4.2).bold();

    public Lettering {
        em = Spot.settled(em);
    }

    /** Regular letters with capitals of this height in millimetres. */
    public static Lettering ofCapitals(double height) {
        return new Lettering(height / Alphabet.CAP_HEIGHT, Face.REGULAR);
    }

    public Lettering bold() {
        return new Lettering(em, Face.BOLD);
    }

    public Lettering regular() {
        return new Lettering(em, Face.REGULAR);
    }

    /** Height of capitals and figures in millimetres. */
    public double capHeight() {
        return em * Alphabet.CAP_HEIGHT;
    }

    /** From one baseline to the next in millimetres. */
    public double lineHeight() {
        return em * 1.32;
    }
}
