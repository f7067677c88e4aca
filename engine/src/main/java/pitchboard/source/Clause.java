package pitchboard.source;

/**
 * A place in one edition of a document.
 *
 * @param locus clause, table or page, as printed there
 * @param confidence how its value reached this program
 */
public record Clause(Edition edition, String locus, Confidence confidence) implements Source {
    /** Such as {@code IRC 2021 R311.7.5.1}. */
    @Override
    public String citation() {
        return edition.shortName() + " " + locus;
    }
}
