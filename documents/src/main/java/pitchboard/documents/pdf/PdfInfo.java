package pitchboard.documents.pdf;

/**
 * What a PDF says about itself.
 *
 * @param author who made the papers; may be empty
 * @param language such as {@code en-US}, for those who have it read aloud
 * @param producer the program and its version
 */
public record PdfInfo(String title, String author, String language, String producer) {}
