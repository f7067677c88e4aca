/**
 * What the server needs of whoever keeps the jobs.
 * In: jobs as people wrote them, with the version they began from. Out: versions, old and new.
 * Knows nothing of requests, and nothing of what a job means.
 */
package pitchboard.web.jobs;
