/**
 * Sheets as one PDF: vectors at true size, the type embedded, the words really text.
 * In: settled sheets. Out: bytes, the same for the same sheets on every machine and day.
 */
package pitchboard.documents.pdf;
