/**
 * Drawings that are larger than the paper, true size above all: cut into pages that overlap and are laid together by
 * match marks.
 * In: one large draft. Out: drafts that fit the frame, each with a check ruler and a key to its neighbours.
 */
package pitchboard.sheet.tiling;
