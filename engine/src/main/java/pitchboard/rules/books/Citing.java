package pitchboard.rules.books;

import pitchboard.source.Clause;
import pitchboard.source.Confidence;
import pitchboard.source.Edition;

/** Cites clauses of one edition, and says how each was come by. */
record Citing(Edition edition) {
    /** Read in a public copy of this edition. */
    Clause read(String locus) {
        return edition.clause(locus, Confidence.READ);
    }

    /** Read in a public copy of another edition, or in a text that adopts one. */
    Clause elsewhere(String locus) {
        return edition.clause(locus, Confidence.READ_ELSEWHERE);
    }

    Clause memory(String locus) {
        return edition.clause(locus, Confidence.FROM_MEMORY);
    }
}
