package pitchboard.source;

/**
 * One edition of one document.
 *
 * @param work the full title
 * @param year the edition, as people name it
 * @param shortName what findings print, such as {@code IRC 2021}
 */
public record Edition(String work, String year, String shortName) {
    public Clause clause(String locus, Confidence confidence) {
        return new Clause(this, locus, confidence);
    }
}
