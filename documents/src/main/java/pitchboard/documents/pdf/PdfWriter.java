package pitchboard.documents.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import pitchboard.sheet.Sheet;

/** Writes sheets as the pages of one PDF, with a bookmark for each. */
public final class PdfWriter {
    private static final double POINTS_PER_MM = 72 / 25.4;
    /** Because the identity must not come from a clock: it is made from this and from what the document says. */
    private static final long IDENTITY = 1;

    private final PdfInfo info;

    public PdfWriter(PdfInfo info) {
        this.info = info;
    }

    /**
     * Writes the whole document; the stream stays open.
     *
     * @throws IOException when the stream cannot be written
     */
    public void write(List<Sheet> sheets, OutputStream to) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(IDENTITY);
            describe(document);
            PdfFonts fonts = new PdfFonts(document);
            PDDocumentOutline bookmarks = new PDDocumentOutline();
            for (Sheet sheet : sheets) {
                PDPage page = page(document, sheet, fonts);
                document.addPage(page);
                bookmarks.addLast(bookmark(sheet, page));
            }
            document.getDocumentCatalog().setDocumentOutline(bookmarks);
            fonts.subset();
            document.save(to);
        }
    }

    private void describe(PDDocument document) {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(info.title());
        if (!info.author().isEmpty()) {
            information.setAuthor(info.author());
        }
        information.setProducer(info.producer());
        document.getDocumentCatalog().setLanguage(info.language());
    }

    private static PDPage page(PDDocument document, Sheet sheet, PdfFonts fonts) throws IOException {
        double width = sheet.paper().widthMm();
        double height = sheet.paper().heightMm();
        PDPage page = new PDPage(new PDRectangle((float) (width * POINTS_PER_MM), (float) (height * POINTS_PER_MM)));
        page.setResources(fonts.resources());
        String operators = new PdfContent(height, fonts).write(sheet.marks());
        PDStream stream = new PDStream(document);
        try (OutputStream content = stream.createOutputStream(COSName.FLATE_DECODE)) {
            content.write(operators.getBytes(StandardCharsets.ISO_8859_1));
        }
        page.setContents(stream);
        return page;
    }

    private static PDOutlineItem bookmark(Sheet sheet, PDPage page) {
        PDPageFitDestination whole = new PDPageFitDestination();
        whole.setPage(page);
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(sheet.title());
        item.setDestination(whole);
        return item;
    }
}
