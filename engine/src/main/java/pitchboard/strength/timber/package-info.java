/**
 * Timber by allowable stress: what the NDS and its Supplement publish, and how a published value becomes the one a
 * board in use may be held to. Values are data with edition and clause; a species, grade or size they do not have is
 * told, never replaced by a near one.
 * Knows nothing about stairs.
 */
package pitchboard.strength.timber;
