package pitchboard.carry;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pitchboard.carry.joints.Caution;
import pitchboard.carry.members.TreadSpacing;
import pitchboard.parts.Worksheet;

/**
 * What came of the question whether it carries.
 *
 * @param method the standard, in words
 * @param assumptions what nobody said and what was taken instead, each a whole sentence
 * @param cautions what tests and practice say beyond what was reckoned
 * @param findings worst first within each topic
 * @param waysOut what would make failing stringers pass, those that help first, least work first; empty when they carry
 * @param spacings how far apart stringers may stand under treads of this wood
 * @param worksheet every figure with its working
 */
public record Carried(
        String method,
        List<String> assumptions,
        List<Caution> cautions,
        List<MemberFinding> findings,
        List<WayOut> waysOut,
        List<TreadSpacing> spacings,
        List<Worksheet.Section> worksheet) {
    /** When an engineer is needed, and whose word goes before this program's. */
    public static final String WHOSE_WORD =
            "This is a reckoning, not a permit. The word of a licensed engineer, or of the"
                    + " official who inspects the stair, goes before it. Ask an engineer where a check fails or cannot be told,"
                    + " where more than one household uses the stair, and wherever something unusual rests on it.";

    public Carried {
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
        findings = List.copyOf(findings);
        waysOut = List.copyOf(waysOut);
        spacings = List.copyOf(spacings);
        worksheet = List.copyOf(worksheet);
    }

    public boolean hasFailures() {
        return findings.stream().anyMatch(MemberFinding::isFailure);
    }

    /** The check of a topic that comes nearest to what it may, or farthest past it; empty when none was reckoned. */
    public Optional<MemberFinding> findWorst(MemberFinding.Topic topic) {
        return findings.stream()
                .filter(finding -> finding.topic() == topic && finding.ratio().isPresent())
                .max(Comparator.comparingDouble(finding -> finding.ratio().orElse(0.0)));
    }
}
