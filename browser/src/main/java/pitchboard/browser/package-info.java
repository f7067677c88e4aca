/**
 * The engine as the browser calls it: one function, text in and text out.
 * In: a request as JSON, which holds the job. Out: an answer as JSON. Every request stands alone: nothing is kept
 * between two of them. Knows no page, no network and no storage.
 */
package pitchboard.browser;
