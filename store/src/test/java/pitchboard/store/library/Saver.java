package pitchboard.store.library;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import pitchboard.store.FileTrouble;
import pitchboard.store.Notation;

/** A program of its own that saves one job on and on, and says the number of each version once it is acknowledged. */
final class Saver {
    private Saver() {}

    /**
     * The file and the job; {@code training} instead of a job saves one of its own a few times and ends, so that Java sees
     * all that is needed.
     */
    public static void main(String[] arguments) throws FileTrouble {
        try (JobLibrary library = JobLibrary.open(Path.of(arguments[0]), Clock.systemUTC())) {
            if (arguments[1].equals("training")) {
                save(library, library.create(draft(1), By.device("Saver")).id(), 10);
            } else {
                save(library, arguments[1], Integer.MAX_VALUE);
            }
        }
    }

    private static void save(JobLibrary library, String id, int last) throws FileTrouble {
        int number = library.findNewest(id).orElseThrow().version().number();
        while (number < last
                && library.save(id, number, draft(number + 1), By.device("Saver")) instanceof Saving.Saved) {
            number++;
            System.out.println(number);
        }
    }

    /** What version {@code number} must say: long enough, now and then, to lie on several pages. */
    static Draft draft(int number) {
        String text = "job: " + number + "\n" + "# a thought\n".repeat(number * 37 % 500);
        return new Draft(new Wording(Notation.YAML, text), Optional.empty(), "job " + number, "");
    }
}
