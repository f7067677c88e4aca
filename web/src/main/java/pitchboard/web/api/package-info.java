/**
 * What the page asks of the server, all of it below {@code /api}.
 * In: requests that were let in. Out: jobs, versions, ticks and papers. What a job means is asked of the use cases.
 */
package pitchboard.web.api;
