package pitchboard.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import pitchboard.app.Reports;
import pitchboard.job.Outcome;

/** The stair and its findings. */
@Command(
        name = "show",
        description = "Prints the stair, what the rules say of it, its pieces and its marks.",
        mixinStandardHelpOptions = true,
        footerHeading = "%nExamples:%n",
        footer = {
            "  pitchboard show examples/boathouse-loft.yaml",
            "  pitchboard show examples/boathouse-loft.yaml --json > loft.json",
            "",
            "The fields of the JSON are explained in docs/json.md."
        })
final class ShowCommand extends JobCommand {
    @Option(names = "--json", description = "print JSON for other programs")
    private boolean json;

    @Option(names = "--elements", description = "look at the stringers by finite elements, too: a second opinion")
    private boolean elements;

    @Override
    String print(Outcome outcome) {
        return json ? Reports.json(outcome, elements) : Reports.text(outcome, elements);
    }
}
