package pitchboard.parts;

import java.util.Optional;
import pitchboard.brief.Handrail;
import pitchboard.brief.Section;
import pitchboard.railing.HandrailRun;
import pitchboard.stair.Stair;

/** The handrails as pieces, on walls and on guards alike. */
public final class HandrailParts {
    private HandrailParts() {}

    /** Empty when no handrail is wanted, or its height or section is not settled. */
    static Optional<Part> find(Stair stair) {
        Handrail rail = stair.brief().handrail();
        return HandrailRun.find(stair)
                .flatMap(run -> rail.grip().map(grip -> {
                    Section section = section(grip);
                    return new Part(
                            PartId.HANDRAIL,
                            "handrail",
                            purpose(rail),
                            rail.sides().count(),
                            section.thickness(),
                            section.width(),
                            run.length());
                }));
    }

    private static String purpose(Handrail rail) {
        return rail.past().head().isZero()
                ? "from over the lowest nosing to over the top riser, ends returned"
                : "up the slope and on level past the top riser, ends returned; length is along its top";
    }

    /** Over all: its height square to the slope, and its width across. */
    public static Section section(Handrail.Grip grip) {
        if (grip instanceof Handrail.Grip.Round round) {
            return new Section(round.diameter(), round.diameter());
        }
        Handrail.Grip.Rectangle sides =
                grip instanceof Handrail.Grip.Recessed recessed ? recessed.section() : (Handrail.Grip.Rectangle) grip;
        return new Section(sides.height(), sides.width());
    }
}
