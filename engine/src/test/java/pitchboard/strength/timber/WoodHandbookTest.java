package pitchboard.strength.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.source.Confidence;
import pitchboard.strength.Elastic;
import pitchboard.strength.Stress;

/** Wood Handbook, chapter 5, Tables 5-1 and 5-2: Douglas-fir as public notes quote it, the others from memory. */
final class WoodHandbookTest {
    private static final Stress E = Stress.psi(1_600_000);

    @ParameterizedTest
    @CsvSource(textBlock = """
            # group, wood of the table, ET/EL, GLT/EL, nuLT, ER/EL, GLR/EL, nuLR
            Douglas Fir-Larch,       Douglas-fir,      0.050, 0.078, 0.449, 0.068, 0.064, 0.292
            Hem-Fir,                 western hemlock,  0.031, 0.032, 0.423, 0.058, 0.038, 0.485
            Southern Pine,           loblolly pine,    0.078, 0.081, 0.292, 0.113, 0.082, 0.328
            Western Cedars,          western redcedar, 0.055, 0.086, 0.296, 0.081, 0.087, 0.378
            """)
    void a_group_has_the_constants_of_one_of_its_woods(
            String group, String wood, double et, double glt, double nult, double er, double glr, double nulr) {
        ElasticRatios ratios = WoodHandbook.ratios(group);
        check(ratios.tangential(E), wood, et, glt, nult);
        check(ratios.radial(E), wood, er, glr, nulr);
    }

    private static void check(Elastic elastic, String wood, double across, double shear, double poisson) {
        assertThat(elastic.of()).isEqualTo(wood);
        assertThat(elastic.along()).isEqualTo(E);
        assertThat(elastic.across().psi()).isCloseTo(across * 1_600_000, within(1e-6));
        assertThat(elastic.shear().psi()).isCloseTo(shear * 1_600_000, within(1e-6));
        assertThat(elastic.poisson()).isEqualTo(poisson);
    }

    @Test
    void what_was_read_is_told_from_what_is_remembered() {
        assertThat(WoodHandbook.ratios("Douglas Fir-Larch").source().confidence())
                .isEqualTo(Confidence.READ_ELSEWHERE);
        assertThat(WoodHandbook.ratios("Hem-Fir").source().confidence()).isEqualTo(Confidence.FROM_MEMORY);
    }

    @Test
    void a_group_with_no_wood_in_the_table_takes_what_is_usual_and_says_so() {
        ElasticRatios usual = WoodHandbook.ratios("Northern Species");
        assertThat(usual.of()).contains("no wood of this group is tabled");
        assertThat(usual.source().citation()).doesNotContain("Wood Handbook");
    }

    @Test
    void only_one_group_of_the_design_values_has_no_wood_in_the_table() {
        assertThat(Supplement2018.table().species())
                .filteredOn(group -> WoodHandbook.ratios(group).of().contains("no wood"))
                .containsExactly("Northern Species");
    }

    /** A stretch along the grain narrows the board by less than would make volume out of nothing. */
    @Test
    void every_wood_is_sound() {
        assertThat(WoodHandbook.all()).hasSize(12).allSatisfy(each -> {
            assertThat(each.tangentialPoisson() * each.tangentialPoisson() * each.tangentialShare())
                    .isBetween(0.0, 0.1);
            assertThat(each.tangentialShare()).isBetween(0.02, 0.15);
            assertThat(each.radialShare()).isBetween(0.02, 0.15);
            assertThat(each.tangentialShear()).isBetween(0.02, 0.15);
            assertThat(each.radialShear()).isBetween(0.02, 0.15);
        });
    }
}
