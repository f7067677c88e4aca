package pitchboard.store.library;

/**
 * What the list of jobs is to show.
 *
 * @param words all of them must be found in the name or the place; blank for every job. Capital or small letters,
 *     accents and dots are all one.
 * @param most 0 or more
 */
public record Search(String words, Shelf shelf, int most) {
    /** Where a job lies. */
    public enum Shelf {
        AT_HAND,
        ARCHIVED
    }

    public Search {
        if (most < 0) {
            throw new IllegalArgumentException("a list of at most " + most + " jobs");
        }
    }
}
