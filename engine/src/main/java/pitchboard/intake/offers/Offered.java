package pitchboard.intake.offers;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;

/**
 * Several ways of doing one job, as a customer shall choose from.
 *
 * @param name what the choice is called
 * @param ways two to four, in the order they are printed
 */
public record Offered(String name, List<Way> ways) {
    public Offered {
        ways = List.copyOf(ways);
    }

    /**
     * One way.
     *
     * @param at where it stands in its file
     * @param job where its job file is, as said
     * @param says what speaks for it, in the crew's words; empty for nothing
     * @param changes lines of a job file that go before the job's own
     * @param although why it is offered in spite of a rule that fails or a member that does not carry
     */
    public record Way(
            Spot at,
            String name,
            String job,
            String says,
            Optional<Written.Group> changes,
            Optional<String> although) {}
}
