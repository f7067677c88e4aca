package pitchboard.bench;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** One page with one line of text in an embedded font: the floor under every program that writes a PDF. */
public final class HelloPdf {
    private HelloPdf() {}

    public static void main(String[] arguments) throws IOException {
        try (PDDocument document = new PDDocument();
                InputStream font = HelloPdf.class.getResourceAsStream("/fonts/" + arguments[1])) {
            PDPage page = new PDPage();
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.beginText();
                content.setFont(PDType0Font.load(document, font), 12);
                content.newLineAtOffset(72, 720);
                content.showText("hello");
                content.endText();
            }
            document.save(arguments[0]);
        }
    }
}
