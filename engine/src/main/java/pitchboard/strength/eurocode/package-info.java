/**
 * Timber by limit states: strength classes of EN 338 and the design rules of EN 1995-1-1 (Eurocode 5). National annexes
 * may change what stands here; where one decides, the value says so.
 * Knows nothing about stairs.
 */
package pitchboard.strength.eurocode;
