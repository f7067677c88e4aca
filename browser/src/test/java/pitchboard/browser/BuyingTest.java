package pitchboard.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Written;

/** Buying for a job where there is no server. */
final class BuyingTest {
    private static final Path LOFT = Requests.root().resolve("examples/boathouse-loft.yaml");

    private static String buy(Written yard) {
        return Answers.to(
                Requests.request("buy", Requests.entry("job", Requests.job(LOFT)), Requests.entry("yard", yard)));
    }

    /** By hand: four stringers take a board of 14 ft each, 4 x 34.72 = 138.88. */
    @Test
    void a_stair_is_bought_for_and_proved() {
        assertThat(buy(Requests.yard()))
                .contains("\"complete\":true,\"proved\":true,\"cost\":\"498.56\"")
                .contains("\"boards\":4,\"each\":\"34.72\",\"together\":\"138.88\"")
                .contains("\"sheets\":[]");
    }

    @Test
    void its_papers_are_drawn_when_they_are_asked_for() {
        String answer = Answers.to(Requests.request(
                "buy",
                Requests.entry("job", Requests.job(LOFT)),
                Requests.entry("yard", Requests.yard()),
                Requests.text("sheets", "all")));
        assertThat(answer).contains("\"id\":\"yard\"", "\"id\":\"bench\"", "<svg");
    }

    @Test
    void every_problem_of_the_price_list_is_told() {
        Written.Group list = (Written.Group) Requests.yard();
        Written.Group shorter = new Written.Group(
                list.at(),
                list.entries().stream()
                        .filter(entry ->
                                !entry.key().equals("kerf") && !entry.key().equals("date"))
                        .toList());
        assertThat(buy(shorter))
                .contains("\"in\":\"yard\",\"field\":\"date\"", "\"in\":\"yard\",\"field\":\"kerf\"")
                .doesNotContain("purchase");
        assertThat(JsonWriter.write(shorter)).doesNotContain("kerf");
    }
}
