package pitchboard.app;

import java.nio.file.Path;
import java.util.List;
import pitchboard.costing.Rates;
import pitchboard.intake.rates.RatesText;
import pitchboard.intake.written.JsonWriter;
import pitchboard.store.FileTrouble;
import pitchboard.store.RatesFiles;

/** What came of opening a file of rates: the rates, or everything that is wrong with it. */
public sealed interface OpenedRates {
    /** @param text the rates as they would be written, for the fingerprint */
    record Understood(Rates rates, String text) implements OpenedRates {}

    /**
     * Nothing of it can be used.
     *
     * @param troubles at least one
     */
    record NotUnderstood(List<Trouble> troubles) implements OpenedRates {
        public NotUnderstood {
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * Opens a file of rates.
     *
     * @throws FileTrouble when it cannot be read
     */
    static OpenedRates open(Path file) throws FileTrouble {
        return RatesFiles.open(file)
                .match(
                        read -> new Understood(read.rates(), JsonWriter.write(RatesText.write(read.rates()))),
                        unread -> new NotUnderstood(unread.problems().stream()
                                .map(problem -> Trouble.of(file, problem))
                                .toList()));
    }
}
