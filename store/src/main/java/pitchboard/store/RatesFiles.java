package pitchboard.store;

import java.nio.file.Path;
import pitchboard.costing.Rates;
import pitchboard.intake.rates.RatesText;
import pitchboard.intake.written.Written;

/** Files of rates on disk. */
public final class RatesFiles {
    private RatesFiles() {}

    /**
     * Opens a file of rates.
     *
     * @throws FileTrouble when the file is missing or cannot be read
     */
    public static RatesText open(Path file) throws FileTrouble {
        return RatesText.of(WrittenFile.read(file));
    }

    /**
     * Writes rates that differ from those of a file in their hours alone, into a file that is not there yet. In YAML
     * everything else stays as it was written, comments too.
     *
     * @param lines the hours as they shall stand there, from {@code hours:} on
     * @throws FileTrouble when the first file cannot be read, or the new one is there already or cannot be written
     */
    public static void saveWithHours(Path from, Path to, Rates better, String lines) throws FileTrouble {
        String text = Notation.of(to) == Notation.YAML && Notation.of(from) == Notation.YAML
                ? HoursInPlace.of(WrittenFile.text(from), lines)
                : "";
        AtomicWrite.newText(to, means(text, better) ? text : written(to, better));
    }

    /** Whether the text says just this: what was put into a text that somebody wrote is read again before it is kept. */
    private static boolean means(String text, Rates better) {
        RatesText read = RatesText.of(Notation.YAML.read(text));
        return read.match(good -> good.rates().equals(better), bad -> false);
    }

    private static String written(Path to, Rates better) {
        return Notation.of(to).write((Written.Group) RatesText.write(better));
    }
}
