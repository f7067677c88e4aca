package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class BuyTest {
    private static final Path LIST = Run.ROOT.resolve("examples/yard/harbour-street-timber.yaml");

    @TempDir
    Path folder;

    private static Run buy(String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "buy";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return Run.of(all);
    }

    private static String loft() {
        return Run.example("boathouse-loft").toString();
    }

    private Path changed(String from, String to) throws IOException {
        String list = Files.readString(LIST);
        assertThat(list).contains(from);
        return Files.writeString(folder.resolve("yard.yaml"), list.replace(from, to));
    }

    /**
     * By hand: four stringers of 13'-5 15/16" take a board of 14 ft each, 14 x 2.48 = 34.72; no board under 27 ft holds
     * two. 4 x 34.72 = 138.88, and the sole board of 40 in comes off the rack.
     */
    @Test
    void the_loft_takes_four_boards_for_its_stringers() {
        Run run = buy(loft(), "--yard", LIST.toString());
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        assertThat(run.out())
                .contains("buy  4 of 14'-0\" at 34.72 = 138.88", "138.88 USD; proved: nothing cheaper")
                .contains("from the rack: F to 40\"");
    }

    @Test
    void several_jobs_are_bought_together_and_told_apart_by_letters() {
        Run both = buy(loft(), loft(), "--yard", LIST.toString());
        assertThat(both.code()).isEqualTo(ExitCode.DONE);
        assertThat(both.out()).contains("A  Stair to the sail loft", "B  Stair to the sail loft", "AS to ", "BS to ");
    }

    @Test
    void without_a_price_the_list_is_not_complete_and_never_zero() throws IOException {
        Path list = changed("    price per foot: 2.48\n", "");
        list = Files.writeString(
                list, Files.readString(list).replace("price: 41.95, ", "").replace("price: 57.40, ", ""));
        Run run = buy(loft(), "--yard", list.toString());
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.out())
                .contains("no price in the list; planned for the fewest feet", "NOT COMPLETE; what has a price");
        assertThat(buy("--json", loft(), "--yard", list.toString()).out())
                .contains("\"complete\":false", "\"cost\":null");
    }

    @Test
    void a_section_the_yard_does_not_sell_is_named() throws IOException {
        Run run = buy(
                loft(),
                "--yard",
                changed("for: [ riser boards ]", "for: [ posts ]").toString());
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.out())
                .contains(
                        "Not to be had from this list",
                        "the yard sells nothing 3/4\" thick and 7 9/16\" wide or wider");
    }

    @Test
    void a_bad_list_is_refused_with_every_problem() throws IOException {
        Path list = changed("kerf: 1/8", "kerf: -1/8");
        Files.writeString(list, Files.readString(list).replace("price: 41.95", "price: 41.95 EUR"));
        Run run = buy(loft(), "--yard", list.toString());
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains(
                        "kerf: found `-1/8",
                        "stock > 1 > lengths > 5 > price: found `41.95 EUR`, expected an amount in USD");
    }

    @Test
    void a_stair_that_cannot_be_buys_nothing() {
        Run run = buy(Run.example("crane-loft-cannot-be").toString(), "--yard", LIST.toString());
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("no stair fits, so there is nothing to buy");
    }

    @Test
    void papers_and_lists_say_the_same_sum() throws IOException {
        Run run = buy(loft(), "--yard", LIST.toString(), "--to", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        String papers;
        try (var pdf =
                Loader.loadPDF(folder.resolve("boathouse-loft-buying.pdf").toFile())) {
            papers = new PDFTextStripper().getText(pdf);
        }
        List<String> rows = Files.readAllLines(folder.resolve("boathouse-loft-boards.csv"));
        long cents = rows.stream()
                .skip(1)
                .map(row -> row.split(",", -1))
                .mapToLong(cells -> Long.parseLong(cells[cells.length - 2].replace(".", "")))
                .sum();
        String sum = cents / 100 + "." + (cents % 100 < 10 ? "0" : "") + cents % 100;
        assertThat(papers).contains("All boards together: " + sum + " USD");
        assertThat(buy(loft(), "--yard", LIST.toString()).out()).contains("All boards: " + sum + " USD");
        assertThat(Files.readAllLines(folder.resolve("boathouse-loft-cuts.csv")))
                .contains("2x12,1,yard,168.5,S,stringer,0.5,162.4375");
    }
}
