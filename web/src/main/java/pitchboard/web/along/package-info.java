/**
 * The page to take along: one file with the page, the engine and one job inside, which opens without a server.
 * In: the files of the page and a job as JSON. Out: HTML that asks the network for nothing.
 */
package pitchboard.web.along;
