package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pitchboard.RandomJobs.Asked;
import pitchboard.Samples;
import pitchboard.rules.RulebookGate;
import pitchboard.rules.books.Books;

/** Every stair that is tried, against the choices that come of it, on random jobs. */
final class ConsideredLawsTest {
    private static final Samples<Asked> JOBS = Samples.jobs(15);
    private static final Gate CODE = new RulebookGate(Books.all().get(0));
    private static final Gate WOOD = new Buildable();

    private static List<Considered> considered(Asked job) {
        return Solver.considered(job.site(), job.brief(), CODE);
    }

    private static Set<Flight> flights(Stream<Stair> stairs) {
        return stairs.map(Stair::flight).collect(Collectors.toSet());
    }

    @Test
    void what_is_allowed_and_fits_is_what_can_be_chosen_from() {
        JOBS.hold(job -> {
            Choices choices = Solver.choices(job.site(), job.brief(), CODE);
            assertThat(flights(considered(job).stream()
                            .filter(each -> each.allowed() && each.fits())
                            .map(Considered::stair)))
                    .isEqualTo(flights(Stream.concat(choices.allowed().stream(), choices.otherwiseAllowed().stream())
                            .map(Option::stair)));
        });
    }

    @Test
    void the_chosen_stair_and_the_near_misses_were_tried_and_none_twice() {
        JOBS.hold(job -> {
            Choices choices = Solver.choices(job.site(), job.brief(), CODE);
            List<Considered> considered = considered(job);
            Set<Flight> tried = flights(considered.stream().map(Considered::stair));
            assertThat(tried).hasSameSizeAs(considered);
            assertThat(tried)
                    .containsAll(flights(Stream.concat(choices.chosen().stream(), choices.nearMisses().stream())
                            .map(Option::stair)));
        });
    }

    @Test
    void allowed_and_fits_say_what_the_objections_say() {
        JOBS.hold(job -> assertThat(considered(job))
                .allMatch(
                        each -> each.allowed() == CODE.objections(each.stair()).isEmpty())
                .allMatch(each -> each.fits() == WOOD.objections(each.stair()).isEmpty()));
    }

    @Test
    void comfortable_is_what_meets_a_step_formula() {
        JOBS.hold(job -> assertThat(considered(job))
                .allMatch(each -> each.isComfortable()
                        != new Option(each.stair(), List.of()).comforts().isEmpty()));
    }
}
