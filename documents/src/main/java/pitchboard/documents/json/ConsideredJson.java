package pitchboard.documents.json;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.job.Outcome;
import pitchboard.measure.Length;
import pitchboard.stair.Considered;
import pitchboard.stair.Flight;
import pitchboard.stair.Option;

/** Every stair that was tried, in short: to be shown all at once, rise against run. */
public final class ConsideredJson {
    private final QuantityJson quantities;
    private final Optional<Flight> chosen;
    /** Many stairs have a run or a rise in common, and each is written once. */
    private final Map<Length, Json> written = new HashMap<>();

    private ConsideredJson(Outcome outcome) {
        this.quantities = new QuantityJson(outcome.job().brief().tape());
        this.chosen = outcome.choices().chosen().map(Option::stair).map(stair -> stair.flight());
    }

    /** @param considered what was tried on the way to the outcome */
    public static Json of(Outcome outcome, List<Considered> considered) {
        ConsideredJson json = new ConsideredJson(outcome);
        return Json.list(considered, json::of);
    }

    private Json of(Considered considered) {
        Flight flight = considered.stair().flight();
        return Json.object()
                .with("risers", Json.number(flight.risers()))
                .with("run", of(flight.run()))
                .with("rise", of(flight.rise()))
                .with("allowed", Json.truth(considered.allowed()))
                .with("fits", Json.truth(considered.fits()))
                .with("comfortable", Json.truth(considered.isComfortable()))
                .with("chosen", Json.truth(chosen.equals(Optional.of(flight))));
    }

    private Json of(Length length) {
        return written.computeIfAbsent(length, quantities::of);
    }
}
