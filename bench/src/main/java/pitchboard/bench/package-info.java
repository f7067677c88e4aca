/**
 * Benchmarks of one job, of many jobs and of the whole process.
 *
 * <p>In: the example jobs. Out: times. Nothing depends on it.
 */
package pitchboard.bench;
