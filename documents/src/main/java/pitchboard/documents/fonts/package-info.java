/**
 * The font files that go into papers: Archivo Narrow, under the SIL Open Font License (its text lies beside them).
 * Out: bytes.
 */
package pitchboard.documents.fonts;
