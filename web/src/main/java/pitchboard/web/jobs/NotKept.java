package pitchboard.web.jobs;

/** What could not be kept or looked up, because disk or database refused: one sentence for whoever asked. */
public final class NotKept extends Exception {
    public NotKept(String words, Throwable cause) {
        super(words, cause);
    }
}
