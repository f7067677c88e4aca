package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The browser prints the sheets as they are: each on a page of its own, at its true size. */
final class PrintTest extends Visit {
    /** Half of what the finest line of a tape can tell: a fortieth of a millimetre for each hundred. */
    private static final double TRUE = 0.05;

    private byte[] printed() {
        page.run("window.print = () => { window.asked = true; }");
        page.tap("Print");
        page.until("return window.asked");
        Map<String, Object> answer = page.driver()
                .executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true));
        return Base64.getDecoder().decode((String) answer.get("data"));
    }

    @Test
    void every_sheet_is_a_page_of_letter_paper_and_its_ruler_is_true() throws Exception {
        openExample("papers");
        page.until("return document.querySelector('.sheets svg')");
        int sheets = ((List<?>) page.run("return [...document.querySelectorAll('.sheets li')].map(() => 1)")).size();
        try (PDDocument printed = Loader.loadPDF(printed())) {
            assertThat(printed.getNumberOfPages()).isEqualTo(sheets);
            for (PDPage each : printed.getPages()) {
                PDRectangle paper = each.getMediaBox();
                assertThat(Math.min(paper.getWidth(), paper.getHeight())).isCloseTo(8.5f * 72, within(0.5f));
                assertThat(Math.max(paper.getWidth(), paper.getHeight())).isCloseTo(11f * 72, within(0.5f));
            }
            theRulersAreTrue(printed);
        }
    }

    /** 100 mm along the upper edge, 4 in along the lower, as the words beside them say. */
    private static void theRulersAreTrue(PDDocument printed) throws Exception {
        int rulers = 0;
        for (int number = 1; number <= printed.getNumberOfPages(); number++) {
            PDFTextStripper words = new PDFTextStripper();
            words.setStartPage(number);
            words.setEndPage(number);
            if (words.getText(printed).contains("measure this ruler: 100 mm and 4 in")) {
                List<Double> lengths = StraightLines.level(printed.getPage(number - 1));
                assertThat(lengths).anySatisfy(length -> assertThat(length).isCloseTo(100, within(TRUE)));
                assertThat(lengths).anySatisfy(length -> assertThat(length).isCloseTo(101.6, within(TRUE)));
                rulers++;
            }
        }
        assertThat(rulers).isPositive();
    }

    @Test
    void after_printing_the_page_is_as_it_was() throws Exception {
        openExample("papers");
        page.until("return document.querySelector('.sheets svg')");
        page.run("window.print = () => { window.asked = true; }");
        page.tap("Print");
        page.until("return window.asked && document.querySelector('.print-sheets')");
        page.run("window.dispatchEvent(new Event('afterprint'))");
        page.untilGone(".print-sheets");
        assertThat(page.text("h2")).isEqualTo("Papers");
    }
}
