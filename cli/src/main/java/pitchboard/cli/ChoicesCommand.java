package pitchboard.cli;

import picocli.CommandLine.Command;
import pitchboard.app.Reports;
import pitchboard.job.Outcome;

/** Which stairs are possible. */
@Command(
        name = "choices",
        description = "Lists the stairs that rulebook and space allow, best first, the near misses, and what would"
                + " make each fit.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExample:%n",
        footer = "  pitchboard choices examples/boathouse-loft.yaml")
final class ChoicesCommand extends JobCommand {
    @Override
    String print(Outcome outcome) {
        return Reports.choices(outcome);
    }
}
