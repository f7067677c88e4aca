/**
 * The papers for the timber yard and the cutting bench.
 * In: what is bought and how it is cut. Out: settled sheets. Works nothing out: every mark and sum is in the order.
 */
package pitchboard.sheet.buying;
