package pitchboard.documents.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.brief.Paper;
import pitchboard.documents.Specimen;
import pitchboard.documents.fonts.FontFile;
import pitchboard.documents.fonts.Outlines;
import pitchboard.sheet.Face;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Sheet;

final class PdfWriterTest {
    private static final PdfInfo INFO = new PdfInfo("Boathouse, stair", "The crew", "en-US", "Pitchboard 0.1");

    private static byte[] written(List<Sheet> sheets) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new PdfWriter(INFO).write(sheets, bytes);
        return bytes.toByteArray();
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void pages_have_the_size_of_the_paper(Paper paper) throws IOException {
        List<Sheet> sheets = Specimen.sheets(paper);
        try (PDDocument document = Loader.loadPDF(written(sheets))) {
            assertThat(document.getNumberOfPages()).isEqualTo(sheets.size());
            for (PDPage page : document.getPages()) {
                assertThat(page.getMediaBox().getWidth() / 72 * 25.4).isEqualTo(paper.widthMm(), within(0.01));
                assertThat(page.getMediaBox().getHeight() / 72 * 25.4).isEqualTo(paper.heightMm(), within(0.01));
            }
        }
    }

    @Test
    void every_text_of_a_sheet_can_be_read_back_fractions_as_fractions() throws IOException {
        List<Sheet> sheets = Specimen.sheets(Paper.LETTER);
        try (PDDocument document = Loader.loadPDF(written(sheets))) {
            for (int page = 1; page <= sheets.size(); page++) {
                String read = text(document, page).replaceAll("\\s", "");
                for (Mark mark : sheets.get(page - 1).marks()) {
                    if (mark instanceof Mark.Text text) {
                        assertThat(read).contains(text.reads().replaceAll("\\s", ""));
                    } else if (mark instanceof Mark.Dimension dimension) {
                        assertThat(read).contains(dimension.label().reads().replaceAll("\\s", ""));
                    }
                }
            }
            assertThat(text(document, 1)).contains("7 11⁄16″", "3′-10 1⁄8″");
        }
    }

    @Test
    void the_check_ruler_measures_100_millimetres_and_4_inches() throws IOException {
        try (PDDocument document = Loader.loadPDF(written(Specimen.sheets(Paper.LETTER)))) {
            List<Double> edges = Strokes.of(document.getPage(1)).stream()
                    .filter(stroke -> stroke.fromY() == stroke.toY())
                    .filter(stroke -> Math.abs(stroke.width() - Pen.OUTLINE.widthMm()) < 0.01)
                    .map(Strokes.Stroke::length)
                    .toList();
            assertThat(edges).anySatisfy(edge -> assertThat(edge).isEqualTo(100, within(0.02)));
            assertThat(edges).anySatisfy(edge -> assertThat(edge).isEqualTo(101.6, within(0.02)));
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void every_straight_line_of_the_sheet_is_on_the_page_where_it_was_settled(Paper paper) throws IOException {
        List<Sheet> sheets = Specimen.sheets(paper);
        try (PDDocument document = Loader.loadPDF(written(sheets))) {
            for (int i = 0; i < sheets.size(); i++) {
                List<Mark.Line> lines = new ArrayList<>();
                sheets.get(i).marks().forEach(mark -> gather(mark, lines));
                List<Strokes.Stroke> strokes = Strokes.of(document.getPage(i));
                for (Mark.Line line : lines) {
                    assertThat(strokes).anyMatch(stroke -> isFirstStroke(stroke, line, paper));
                }
            }
        }
    }

    private static void gather(Mark mark, List<Mark.Line> lines) {
        if (mark instanceof Mark.Line line) {
            lines.add(line);
        } else if (mark instanceof Mark.Dimension dimension) {
            dimension.strokes().forEach(stroke -> gather(stroke, lines));
        }
    }

    private static boolean isFirstStroke(Strokes.Stroke stroke, Mark.Line line, Paper paper) {
        return Math.abs(stroke.fromX() - line.spots().get(0).x()) < 0.01
                && Math.abs(paper.heightMm()
                                - stroke.fromY()
                                - line.spots().get(0).y())
                        < 0.01
                && Math.abs(stroke.toX() - line.spots().get(1).x()) < 0.01
                && Math.abs(paper.heightMm()
                                - stroke.toY()
                                - line.spots().get(1).y())
                        < 0.01
                && Math.abs(stroke.width() - line.pen().widthMm()) < 0.001;
    }

    @Test
    void the_document_says_what_it_is_and_has_a_bookmark_for_every_sheet() throws IOException {
        List<Sheet> sheets = Specimen.sheets(Paper.A4);
        try (PDDocument document = Loader.loadPDF(written(sheets))) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Boathouse, stair");
            assertThat(document.getDocumentInformation().getAuthor()).isEqualTo("The crew");
            assertThat(document.getDocumentInformation().getProducer()).isEqualTo("Pitchboard 0.1");
            assertThat(document.getDocumentInformation().getCreationDate()).isNull();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(item.getTitle());
                assertThat(item.findDestinationPage(document)).isEqualTo(document.getPage(titles.size() - 1));
            }
            assertThat(titles).isEqualTo(sheets.stream().map(Sheet::title).toList());
        }
    }

    @Test
    void fonts_are_embedded_and_cut_down_to_the_letters_in_use() throws IOException {
        try (PDDocument document = Loader.loadPDF(written(Specimen.sheets(Paper.A4)))) {
            for (COSName name : document.getPage(0).getResources().getFontNames()) {
                PDFont font = document.getPage(0).getResources().getFont(name);
                assertThat(font.isEmbedded()).isTrue();
                assertThat(font.getName()).matches("[A-Z]{6}\\+ArchivoNarrow-(Regular|Bold)");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Face.class)
    void embedded_figures_look_as_in_the_font(Face face) throws IOException {
        try (PDDocument document = Loader.loadPDF(written(Specimen.sheets(Paper.A4)));
                TrueTypeFont whole = new TTFParser(true)
                        .parse(new RandomAccessReadBuffer(FontFile.of(face).bytes()))) {
            COSName name = COSName.getPDFName(face == Face.BOLD ? "B" : "R");
            PDType0Font font = (PDType0Font) document.getPage(0).getResources().getFont(name);
            for (char figure = '0'; figure <= '9'; figure++) {
                int glyph = whole.getUnicodeCmapLookup().getGlyphId(figure);
                assertThat(font.toUnicode(glyph)).isEqualTo(String.valueOf(figure));
                assertThat(Outlines.words(font.getPath(glyph)))
                        .isEqualTo(
                                Outlines.words(whole.getGlyph().getGlyph(glyph).getPath()));
            }
        }
    }

    @Test
    void the_same_sheets_give_the_same_bytes() throws IOException {
        assertThat(written(Specimen.sheets(Paper.A4))).isEqualTo(written(Specimen.sheets(Paper.A4)));
    }
}
