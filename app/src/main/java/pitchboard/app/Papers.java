package pitchboard.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import pitchboard.documents.csv.PartsCsv;
import pitchboard.documents.pdf.PdfInfo;
import pitchboard.documents.pdf.PdfWriter;
import pitchboard.documents.svg.SvgFonts;
import pitchboard.documents.svg.SvgWriter;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.sheet.Sheet;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;

/** Writes a stair's sheets: one PDF with all of them, and each as a drawing in SVG. */
public final class Papers {
    private static final String PRODUCER = "Pitchboard";

    private Papers() {}

    /**
     * Writes {@code NAME.pdf}, {@code NAME-sheets/01-elevation.svg} and so on, and {@code NAME-parts.csv}; files of these names are replaced,
     * each whole or not at all.
     *
     * @return how many sheets there are
     * @throws FileTrouble when a file or folder cannot be written
     */
    public static int write(Outcome.Designed designed, String name, Path folder) throws FileTrouble {
        List<Sheet> sheets = Pipeline.sheets(designed);
        AtomicWrite.folder(folder);
        AtomicWrite.made(folder.resolve(name + ".pdf"), out -> pdf(designed, sheets, out));
        drawings(sheets, folder.resolve(name + "-sheets"));
        AtomicWrite.madeText(folder.resolve(name + "-parts.csv"), PartsCsv.write(designed));
        return sheets.size();
    }

    /**
     * Writes sheets of a stair as one PDF; the stream stays open.
     *
     * @throws IOException when the stream cannot be written
     */
    public static void pdf(Outcome.Designed designed, List<Sheet> sheets, OutputStream out) throws IOException {
        String title = designed.job().brief().title().job();
        new PdfWriter(new PdfInfo(title, "", "en", PRODUCER)).write(sheets, out);
    }

    private static void drawings(List<Sheet> sheets, Path folder) throws FileTrouble {
        AtomicWrite.folder(folder);
        SvgWriter svg = new SvgWriter(SvgFonts.embeddedFor(sheets));
        for (int i = 0; i < sheets.size(); i++) {
            String number = (i < 9 ? "0" : "") + (i + 1);
            AtomicWrite.madeText(folder.resolve(number + "-" + sheets.get(i).id() + ".svg"), svg.write(sheets.get(i)));
        }
    }
}
