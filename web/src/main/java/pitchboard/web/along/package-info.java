/**
 * The page away from the server: as one file with the engine and a job inside, and as the browser keeps it.
 * In: the files of the page and a job as JSON. Out: HTML that asks the network for nothing, and the list of all files.
 */
package pitchboard.web.along;
