package pitchboard.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job's papers, one sheet of them, and its small picture. */
final class PapersTest {
    private static final Path EXAMPLES = Path.of("../examples");

    @TempDir
    static Path folder;

    private static Desk desk;

    @BeforeAll
    static void open() throws Exception {
        desk = Desk.in(folder);
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    private static int pages(Answer pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.bytes())) {
            return document.getNumberOfPages();
        }
    }

    @Test
    void the_papers_are_one_pdf_and_each_sheet_is_one_too() throws Exception {
        String papers = "/api/jobs/" + desk.example() + "/papers";
        Answer all = desk.get(papers + ".pdf");
        assertThat(all.status()).isEqualTo(200);
        assertThat(all.header("Content-Type")).isEqualTo("application/pdf");
        assertThat(all.header("Content-Disposition")).startsWith("inline; filename=\"Stair to the sail loft.pdf\"");
        assertThat(pages(all)).isGreaterThan(8);
        Answer plan = desk.get(papers + "/plan.pdf");
        assertThat(pages(plan)).isEqualTo(1);
        assertThat(plan.header("Content-Disposition")).contains("Stair to the sail loft plan.pdf");
        assertThat(desk.get(papers + "/nothing.pdf").status()).isEqualTo(404);
        assertThat(desk.get(papers + "/..%2f..%2fplan.pdf").status()).isEqualTo(404);
    }

    @Test
    void the_same_job_makes_the_same_bytes() throws Exception {
        String papers = "/api/jobs/" + desk.example() + "/papers.pdf";
        assertThat(desk.get(papers).bytes()).isEqualTo(desk.get(papers).bytes());
    }

    @Test
    void the_picture_is_a_drawing_that_carries_its_pens() throws Exception {
        Answer picture = desk.get("/api/jobs/" + desk.example() + "/picture.svg");
        assertThat(picture.header("Content-Type")).startsWith("image/svg+xml");
        assertThat(picture.body()).startsWith("<svg ").contains("<style>.picture{", "data-part=\"S\"");
    }

    @Test
    void of_a_job_without_a_stair_the_picture_is_empty() throws Exception {
        String unfinished = desk.bring("job: x\nunits: feet\n");
        String cannotBe = desk.bring(Files.readString(EXAMPLES.resolve("crane-loft-cannot-be.yaml")));
        for (String id : List.of(unfinished, cannotBe)) {
            Answer picture = desk.get("/api/jobs/" + id + "/picture.svg");
            assertThat(picture.status()).isEqualTo(200);
            assertThat(picture.header("Content-Type")).startsWith("image/svg+xml");
            assertThat(picture.body()).startsWith("<svg ").doesNotContain("<path", "<g");
        }
        assertThat(desk.get("/api/jobs/nothing/picture.svg").status()).isEqualTo(404);
    }

    @Test
    void a_job_that_is_not_finished_says_what_is_missing() throws Exception {
        Answer refused = desk.get("/api/jobs/" + desk.bring("job: x\nunits: feet\n") + "/papers.pdf");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("\"field\":\"units\"", "inches");
    }

    @Test
    void a_job_that_no_stair_fits_says_so() throws Exception {
        String id = desk.bring(Files.readString(EXAMPLES.resolve("crane-loft-cannot-be.yaml")));
        Answer refused = desk.get("/api/jobs/" + id + "/papers.pdf");
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.trouble()).startsWith("no stair fits");
    }

    @Test
    void words_of_a_job_that_look_like_code_stay_words() throws Exception {
        String loft = Files.readString(EXAMPLES.resolve("boathouse-loft.yaml"));
        String id = desk.bring(loft.replace(
                "job: Stair to the sail loft", "job: \"</title><script>alert(1)</script> \\\"q\\\" ../x\""));
        assertThat(desk.get("/api/jobs/" + id + "/picture.svg").body()).doesNotContain("<script");
        Answer papers = desk.get("/api/jobs/" + id + "/papers.pdf");
        assertThat(papers.status()).isEqualTo(200);
        assertThat(papers.header("Content-Disposition"))
                .isEqualTo("inline; filename=\"title script alert(1) script q .. x.pdf\";"
                        + " filename*=UTF-8''title%20script%20alert%281%29%20script%20q%20..%20x.pdf");
    }
}
