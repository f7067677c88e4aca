package pitchboard.buying.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.buying.cutting.CutPlan;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.PlanChecker;
import pitchboard.buying.cutting.PlanOutcome;
import pitchboard.buying.cutting.Supply;

/**
 * Bin packing from the literature: boards of one length, each at a price of one. Files and optima are those of the data
 * archive INFORMSJoC 2023.0399 (da Silva and Schouery 2025), collected in BPPLIB (Delorme, Iori and Martello 2018). Their
 * licence, CC BY-NC 4.0, forbids commercial use, so they are no part of the project: the test reads them from the
 * folder that {@code -Dpitchboard.openBins=} names, or from {@code ../shared/reference/data/csp/bpp} beside the checkout,
 * and is skipped where they are absent.
 */
final class OpenBinsTest {
    private static final Path FOLDER =
            Path.of(System.getProperty("pitchboard.openBins", "../../shared/reference/data/csp/bpp"));

    @ParameterizedTest
    @CsvSource(textBlock = """
            Falkenauer_u120_00,       48
            Falkenauer_u250_14,      100
            Falkenauer_u500_07,      204
            Falkenauer_u1000_16,     404
            Falkenauer_t60_05,        20
            Falkenauer_t120_03,       40
            Falkenauer_t249_19,       83
            N1C3W4_D,                 21
            N2C1W1_L,                 55
            Waescher_TEST0065,        16
            Waescher_TEST0075,        13
            Waescher_TEST0082,        24
            Schwerin1_BPP9,           18
            Schwerin2_BPP96,          22
            BPP_50_75_0.2_0.7_7,      27
            BPP_200_75_0.2_0.8_3,    103
            """)
    void the_published_optimum_is_found_and_proved(String name, long optimum) throws IOException {
        CutProblem problem = problem(name);
        CutPlan plan = ((PlanOutcome.Planned) Planner.plan(problem, Planner.USUAL_EFFORT)).plan();
        assertThat(PlanChecker.faults(problem, plan, optimum)).isEmpty();
        assertThat(plan.proof().cheapest()).isTrue();
    }

    /** Too hard for a test that must be quick; two of them are one above what any relaxation can show. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            Hard28_BPP175,            84
            Hard28_BPP814,            81
            201_2500_NR_34,           66
            201_2500_DI_31,           65
            """)
    void what_is_not_proved_is_not_said_to_be(String name, long optimum) throws IOException {
        CutProblem problem = problem(name);
        CutPlan plan = ((PlanOutcome.Planned) Planner.plan(problem, 10_000)).plan();
        assertThat(PlanChecker.faults(problem, plan, plan.cost(problem))).isEmpty();
        assertThat(plan.proof().atLeast()).isLessThanOrEqualTo(optimum);
        assertThat(plan.cost(problem)).isGreaterThanOrEqualTo(optimum);
    }

    private static CutProblem problem(String name) throws IOException {
        Path file = FOLDER.resolve(name + ".txt");
        assumeTrue(Files.exists(file), "the open bin packing problems are not here: " + FOLDER);
        List<String> lines = Files.readAllLines(file);
        List<Demand> demands = new ArrayList<>();
        for (String line : lines.subList(2, lines.size())) {
            if (!line.isBlank()) {
                demands.add(new Demand(Long.parseLong(line.strip()), 1));
            }
        }
        long room = Long.parseLong(lines.get(1).strip());
        return new CutProblem(demands, List.of(new Supply(room, 1, Supply.NO_LIMIT)), 0);
    }
}
