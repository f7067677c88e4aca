package pitchboard.cli;

/** What the program tells the shell. */
final class ExitCode {
    /** Done, and nothing fails. */
    static final int DONE = 0;
    /** Done, but the stair fails a rule, or none fits. */
    static final int FAILING = 1;
    /** The command or a file was not understood. */
    static final int NOT_UNDERSTOOD = 2;
    /** Something could not be read or written. */
    static final int NO_ACCESS = 3;
    /** A fault of the program itself. */
    static final int FAULT = 70;

    private ExitCode() {}
}
