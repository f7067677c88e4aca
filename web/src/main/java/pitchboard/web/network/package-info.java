/**
 * The crew's own network: which devices are let in, and how a new one is.
 * In: a code that somebody reads from the screen of the server's machine. Out: a key for one device.
 * Knows no jobs.
 */
package pitchboard.web.network;
