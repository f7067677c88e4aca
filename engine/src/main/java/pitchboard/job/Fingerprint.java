package pitchboard.job;

/** Eight letters and digits that tell one job's inputs from another's; equal text has equal fingerprints. */
public record Fingerprint(String text) {
    /** Without the letters and digits that are misread for each other on a dirty print. */
    private static final String ALPHABET = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

    private static final long FNV_OFFSET = 0xcbf29ce484222325L;
    private static final long FNV_PRIME = 0x100000001b3L;

    /**
     * Of the canonical text of a job, by the FNV-1a hash (64 bits; Fowler, Noll, Vo) over its UTF-16 units, of which
     * the upper 40 bits are shown.
     */
    public static Fingerprint of(String canonicalText) {
        long hash = FNV_OFFSET;
        for (int i = 0; i < canonicalText.length(); i++) {
            hash = (hash ^ canonicalText.charAt(i)) * FNV_PRIME;
        }
        StringBuilder letters = new StringBuilder();
        for (int shift = 59; shift >= 24; shift -= 5) {
            if (letters.length() == 4) {
                letters.append('-');
            }
            letters.append(ALPHABET.charAt((int) (hash >>> shift & 31)));
        }
        return new Fingerprint(letters.toString());
    }
}
