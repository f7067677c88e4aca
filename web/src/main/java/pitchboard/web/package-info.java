/**
 * The page in the hand: a small server on this machine that keeps jobs and hands out the page that works on them.
 * In: the command line, and requests. Out: the page, the jobs as JSON, papers as PDF.
 * Knows nothing of how a stair is worked out: that is the engine's, here and in the browser.
 */
package pitchboard.web;
