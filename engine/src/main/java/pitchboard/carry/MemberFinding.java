package pitchboard.carry;

import java.util.Optional;
import pitchboard.measure.Phrase;
import pitchboard.rules.Verdict;
import pitchboard.source.Source;
import pitchboard.strength.Utilisation;

/**
 * What one check of one member says.
 *
 * @param id stable name of the check, such as {@code stringer-bending}
 * @param subject what was checked, in a few plain words
 * @param verdict a demand against a capacity, or a size against a published one
 * @param words the same as one plain sentence
 * @param working with every factor; empty where there is nothing to reckon
 * @param source who says so
 */
public record MemberFinding(
        String id,
        Topic topic,
        String subject,
        Verdict verdict,
        Phrase words,
        Optional<Utilisation> working,
        Source source) {
    /** What a check is about. */
    public enum Topic {
        STRINGERS("Stringers"),
        TREADS("Treads"),
        /** What holds head, foot and treads. */
        JOINTS("Joints"),
        SUPPORT("Support between foot and head"),
        GUARD("Guard and handrail"),
        GROUND("Ground"),
        /** Sizes somebody published, with what they rest on. */
        PUBLISHED("Published limits");

        private final String title;

        Topic(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }
    }

    public boolean isFailure() {
        return verdict instanceof Verdict.Fail;
    }

    /** Demand over capacity; empty where nothing was reckoned. */
    public Optional<Double> ratio() {
        return working.map(Utilisation::ratio);
    }
}
