package pitchboard.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pitchboard.documents.csv.WaysCsv;
import pitchboard.documents.text.WaysText;
import pitchboard.job.Ways;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;

/** Several ways of doing one job, to be read, to be printed, and for spreadsheets. */
public final class Options {
    private Options() {}

    public static String text(Ways ways) {
        return WaysText.write(ways);
    }

    /**
     * Writes {@code NAME-crew.pdf} and {@code NAME-crew.csv} for the crew and, when something can be offered, {@code
     * NAME-customer.pdf}; files of these names are replaced, each whole or not at all.
     *
     * @return the files
     * @throws FileTrouble when a file or folder cannot be written
     */
    public static List<Path> write(Ways ways, String name, Path folder) throws FileTrouble {
        AtomicWrite.folder(folder);
        List<Path> written = new ArrayList<>();
        Quotes.pdf(ways.name(), ways.crewSheets(), folder.resolve(name + "-crew.pdf"), written);
        Path csv = folder.resolve(name + "-crew.csv");
        AtomicWrite.madeText(csv, WaysCsv.write(ways));
        written.add(csv);
        Quotes.pdf(ways.name(), ways.customerSheets(), folder.resolve(name + "-customer.pdf"), written);
        return written;
    }
}
