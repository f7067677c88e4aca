package pitchboard.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pitchboard.documents.csv.CostCsv;
import pitchboard.documents.json.QuoteJson;
import pitchboard.documents.pdf.PdfInfo;
import pitchboard.documents.pdf.PdfWriter;
import pitchboard.documents.text.CostText;
import pitchboard.job.Quotation;
import pitchboard.sheet.Sheet;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;

/** What a job costs and is offered for, to be read, to be printed, and for spreadsheets. */
public final class Quotes {
    private Quotes() {}

    public static String text(Quotation quotation) {
        return CostText.write(quotation);
    }

    public static String json(Quotation quotation) {
        return QuoteJson.write(quotation);
    }

    /**
     * Writes {@code NAME-cost.pdf}, {@code NAME-cost.csv} and {@code NAME-sundries.csv} for the crew and, when no price is missing, {@code
     * NAME-quote.pdf} for the customer; files of these names are replaced, each whole or not at all.
     *
     * @return the files
     * @throws FileTrouble when a file or folder cannot be written
     */
    public static List<Path> write(Quotation quotation, String name, Path folder) throws FileTrouble {
        AtomicWrite.folder(folder);
        String title = title(quotation);
        List<Path> written = new ArrayList<>();
        pdf(title, quotation.costSheets(), folder.resolve(name + "-cost.pdf"), written);
        Path csv = folder.resolve(name + "-cost.csv");
        AtomicWrite.madeText(csv, CostCsv.write(quotation));
        written.add(csv);
        Path sundries = folder.resolve(name + "-sundries.csv");
        AtomicWrite.madeText(sundries, CostCsv.sundries(quotation));
        written.add(sundries);
        pdf(title, quotation.quoteSheets(), folder.resolve(name + "-quote.pdf"), written);
        return written;
    }

    /** The sheets of a quote as one PDF. */
    public static void pdf(Quotation quotation, List<Sheet> sheets, OutputStream out) throws IOException {
        pdf(title(quotation), sheets, out);
    }

    private static void pdf(String title, List<Sheet> sheets, OutputStream out) throws IOException {
        new PdfWriter(new PdfInfo(title, "", "en", "Pitchboard")).write(sheets, out);
    }

    private static String title(Quotation quotation) {
        return quotation.purchase().jobs().get(0).job().brief().title().job();
    }

    static void pdf(String title, List<Sheet> sheets, Path file, List<Path> written) throws FileTrouble {
        if (!sheets.isEmpty()) {
            AtomicWrite.made(file, out -> pdf(title, sheets, out));
            written.add(file);
        }
    }
}
