package pitchboard.cli;

import java.io.PrintWriter;
import pitchboard.store.FileTrouble;

/** Turns what went wrong into one line and an exit code: the only place that does. */
final class Troubles {
    private Troubles() {}

    static int tell(Exception trouble, PrintWriter err) {
        if (trouble instanceof FileTrouble) {
            err.println(trouble.getMessage());
            return ExitCode.NO_ACCESS;
        }
        StackTraceElement[] trace = trouble.getStackTrace();
        err.println("a fault of the program, please report it with the job file: " + trouble
                + (trace.length > 0 ? " at " + trace[0] : ""));
        return ExitCode.FAULT;
    }
}
