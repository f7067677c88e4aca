package pitchboard.job;

import java.util.List;
import java.util.function.Function;
import pitchboard.carry.Carried;
import pitchboard.parts.Part;
import pitchboard.parts.Worksheet;
import pitchboard.rules.Finding;
import pitchboard.stair.Choices;
import pitchboard.stair.Stair;

/** What came of a job: a stair with all that follows from it, or none and the reasons. */
public sealed interface Outcome {
    Job job();

    Choices choices();

    /**
     * A stair was chosen; it may still have failing findings, when the wishes left no other.
     *
     * @param findings what the rulebook says, worst first
     * @param carried whether it carries
     */
    record Designed(
            Job job,
            Choices choices,
            Stair stair,
            List<Finding> findings,
            List<Part> parts,
            List<Worksheet.Section> worksheet,
            Carried carried)
            implements Outcome {
        public Designed {
            findings = List.copyOf(findings);
            parts = List.copyOf(parts);
            worksheet = List.copyOf(worksheet);
        }

        /** A rule fails, or something does not carry. */
        public boolean hasFailures() {
            return failsRules() || carried.hasFailures();
        }

        public boolean failsRules() {
            return findings.stream().anyMatch(Finding::isFailure);
        }
    }

    /** No stair fits; the near misses of the choices say what is in the way and what would help. */
    record NoStair(Job job, Choices choices) implements Outcome {}

    /** One answer for each case. */
    default <T> T match(Function<Designed, T> designed, Function<NoStair, T> noStair) {
        return this instanceof Designed d ? designed.apply(d) : noStair.apply((NoStair) this);
    }
}
