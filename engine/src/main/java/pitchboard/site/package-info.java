/**
 * What was measured where the stair will stand.
 * In: measurements with how sure they are. Out: the exact rise at any landing point, the space, the obstructions.
 * Wishes belong to {@code brief}; nothing here chooses.
 */
package pitchboard.site;
