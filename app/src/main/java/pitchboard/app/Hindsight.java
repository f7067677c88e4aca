package pitchboard.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pitchboard.afterwards.Afterwards;
import pitchboard.documents.csv.AfterwardsCsv;
import pitchboard.documents.text.AfterwardsText;
import pitchboard.documents.text.HoursLines;
import pitchboard.job.Quotation;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;
import pitchboard.store.RatesFiles;

/** What a job took against what was planned, to be read, to be printed, for spreadsheets and for the next quote. */
public final class Hindsight {
    private Hindsight() {}

    public static String text(Afterwards after) {
        return AfterwardsText.write(after) + "\nHours for the file of rates\n" + HoursLines.write(after);
    }

    /**
     * Writes {@code NAME-afterwards.pdf}, three lists as CSV and {@code NAME-hours.yaml}, lines for a file of rates; files of
     * these names are replaced, each whole or not at all.
     *
     * @return the files
     * @throws FileTrouble when a file or folder cannot be written
     */
    public static List<Path> write(Quotation quotation, Afterwards after, String name, Path folder) throws FileTrouble {
        AtomicWrite.folder(folder);
        List<Path> written = new ArrayList<>();
        Path pdf = folder.resolve(name + "-afterwards.pdf");
        Quotes.pdf(after.took().name(), quotation.afterwardsSheets(after), pdf, written);
        text(folder.resolve(name + "-afterwards-hours.csv"), AfterwardsCsv.hours(after), written);
        text(folder.resolve(name + "-afterwards-costs.csv"), AfterwardsCsv.costs(after), written);
        text(folder.resolve(name + "-afterwards-noted.csv"), AfterwardsCsv.noted(after), written);
        text(folder.resolve(name + "-hours.yaml"), HoursLines.write(after), written);
        return written;
    }

    private static void text(Path file, String text, List<Path> written) throws FileTrouble {
        AtomicWrite.madeText(file, text);
        written.add(file);
    }

    /**
     * Writes the rates with the hours that would have been right into a new file.
     *
     * @throws FileTrouble when that file is there already, or cannot be written
     */
    public static void saveRates(Path from, Path to, Afterwards after) throws FileTrouble {
        RatesFiles.saveWithHours(from, to, after.betterRates(), HoursLines.write(after));
    }
}
