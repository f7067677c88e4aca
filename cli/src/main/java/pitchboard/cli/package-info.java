/**
 * The command line: reads arguments, calls a use case, prints, answers with an exit code.
 *
 * <p>In: arguments. Out: text and an exit code. Must not know any other face.
 */
package pitchboard.cli;
