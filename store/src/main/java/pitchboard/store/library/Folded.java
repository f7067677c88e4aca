package pitchboard.store.library;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Words made alike for searching: capital and small letters, accents, and the dot that Turkish puts on one i and not on
 * the other. The same in every language of the machine.
 */
record Folded(String words) {
    static Folded of(String text) {
        String apart = Normalizer.normalize(text.toUpperCase(Locale.ROOT), Normalizer.Form.NFKD);
        StringBuilder folded = new StringBuilder(apart.length());
        apart.codePoints()
                .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                // One by one, because the small letter for a Greek sigma depends on where in the word it stands.
                .map(Character::toLowerCase)
                .forEach(folded::appendCodePoint);
        return new Folded(folded.toString());
    }

    /** Whether each of the words looked for stands in one of the texts. */
    static boolean found(Folded search, String... texts) {
        List<String> folded = Stream.of(texts).map(text -> of(text).words).toList();
        return Arrays.stream(search.words.strip().split("\\s+"))
                .allMatch(word -> folded.stream().anyMatch(text -> text.contains(word)));
    }
}
