package pitchboard.source;

/** Cites clauses of one edition, and says how each was come by. */
public record Citing(Edition edition) {
    /** Read in a public copy of this edition. */
    public Clause read(String locus) {
        return edition.clause(locus, Confidence.READ);
    }

    /** Read in a public copy of another edition, or in a text that adopts one. */
    public Clause elsewhere(String locus) {
        return edition.clause(locus, Confidence.READ_ELSEWHERE);
    }

    public Clause memory(String locus) {
        return edition.clause(locus, Confidence.FROM_MEMORY);
    }
}
