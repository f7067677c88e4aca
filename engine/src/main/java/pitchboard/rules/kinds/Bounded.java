package pitchboard.rules.kinds;

import java.util.Optional;
import pitchboard.rules.Limit;
import pitchboard.rules.Rule;

/** A rule with one limit of its own, which a local change may move. */
public interface Bounded extends Rule {
    Limit bound();

    @Override
    default Optional<Limit> limit() {
        return Optional.of(bound());
    }
}
