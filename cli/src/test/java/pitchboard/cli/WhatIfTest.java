package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What would be cheaper: every case is planned, judged and bought for real, and told cheapest first. */
final class WhatIfTest {
    private static final String LIST =
            Run.ROOT.resolve("examples/yard/harbour-street-timber.yaml").toString();
    private static final String RATES =
            Run.ROOT.resolve("examples/yard/two-of-us.yaml").toString();

    @TempDir
    Path folder;

    private static Run whatIf(String... more) {
        List<String> all =
                new ArrayList<>(List.of("buy", Run.example("boathouse-loft").toString(), "--yard", LIST, "--what-if"));
        all.addAll(List.of(more));
        return Run.of(all.toArray(new String[0]));
    }

    /**
     * By hand: a further stringer is a fifth board of 14 ft, 14 x 2.48 = 34.72, and its post a third of 8 ft, 27.90: 62.62
     * more. One fewer is a board less; its post saves none.
     */
    @Test
    void one_stringer_more_or_fewer_costs_its_board() {
        String told = whatIf().out();
        assertThat(told).contains("""
                5 stringers
                  boards    561.18 USD, 62.62 more than as it is
                """).contains("because   2x12: 5 of 14'-0\" instead of 4 of 14'-0\"");
        assertThat(told).contains("""
                3 stringers
                  boards    463.84 USD, 34.72 less than as it is
                """);
    }

    /** 2x6 would take 2x12 for its treads; 2x4 would take 2x6, but the treads must not follow it to 2x12. */
    @Test
    void another_stock_is_priced_without_moving_other_pieces() {
        String told = whatIf().out();
        assertThat(told)
                .contains("instead of 2x6\n", "2x6, Douglas fir-larch, No. 2, above ground, instead of 2x4\n")
                .doesNotContain("2x12, Douglas fir-larch, No. 2, for ground contact, instead of 2x4")
                .doesNotContain("no price for all");
    }

    @Test
    void as_it_is_costs_what_buying_costs() {
        String told = whatIf().out();
        assertThat(told).contains("""
                as it is
                  boards    498.56 USD
                """);
    }

    @Test
    void the_cheapest_comes_first_and_every_case_has_its_verdicts() {
        String told = whatIf().out();
        List<BigDecimal> costs = new ArrayList<>();
        Matcher costed = Pattern.compile("boards    ([0-9.]+) USD").matcher(told);
        while (costed.find()) {
            costs.add(new BigDecimal(costed.group(1)));
        }
        assertThat(costs).hasSizeGreaterThan(6).isSorted();
        assertThat(told.split("rules     ", -1)).hasSameSizeAs(told.split("strength  ", -1));
    }

    @Test
    void with_rates_the_whole_job_is_priced() {
        Run priced = whatIf("--rates", RATES, "--on", "2027-05-14");
        Run quoted = Run.of(
                "quote",
                Run.example("boathouse-loft").toString(),
                "--yard",
                LIST,
                "--rates",
                RATES,
                "--on",
                "2027-05-14");
        Matcher whole =
                Pattern.compile("as it is\n.*\n  whole job ([0-9.]+) USD").matcher(priced.out());
        assertThat(whole.find()).isTrue();
        assertThat(quoted.out()).contains(whole.group(1));
    }

    @Test
    void the_table_and_the_list_are_written() throws IOException {
        Run run = whatIf("--to", folder.toString());
        assertThat(run.out()).contains("boathouse-loft-what-if.pdf", "boathouse-loft-what-if.csv");
        assertThat(Files.readString(folder.resolve("boathouse-loft-what-if.csv")))
                .contains("5 stringers,561.18,62.62");
    }

    @Test
    void what_does_not_go_together_is_refused() {
        assertThat(whatIf("--rates", RATES).code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(Run.of("buy", Run.example("boathouse-loft").toString(), "--yard", LIST, "--on", "2027-05-14")
                        .code())
                .isEqualTo(ExitCode.NOT_UNDERSTOOD);
        String loft = Run.example("boathouse-loft").toString();
        assertThat(Run.of("buy", loft, loft, "--yard", LIST, "--what-if").err()).contains("one job at a time");
    }
}
