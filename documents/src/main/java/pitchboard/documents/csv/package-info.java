/**
 * Lists for spreadsheets.
 * In: results. Out: comma-separated text as RFC 4180 has it. Transcribes; works nothing out.
 */
package pitchboard.documents.csv;
