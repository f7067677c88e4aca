/**
 * Text with a shape: what a person wrote, before anybody asks what it means.
 * In: JSON text, or a tree made elsewhere. Out: {@link pitchboard.intake.written.Written}, in which every value is
 * still the text that was typed and knows its line and column; and the same tree as JSON or YAML text again.
 * Knows nothing of stairs, lengths or keys.
 */
package pitchboard.intake.written;
