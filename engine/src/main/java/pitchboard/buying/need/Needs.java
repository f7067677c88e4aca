package pitchboard.buying.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.buying.yard.Use;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.parts.Part;
import pitchboard.parts.PartId;
import pitchboard.parts.StringerLayout;
import pitchboard.stair.Stair;

/** Turns the parts of a stair into what has to be bought for it. */
public final class Needs {
    private Needs() {}

    /**
     * One need for each part, but not for the pitch board: that is a template, cut from whatever lies about; nor for a rail
     * of no length, as over a single riser.
     *
     * @param job stands before the mark of every piece; empty for a job bought alone
     * @param kerf the saw's, between two stringers that lie in one board
     */
    public static List<Need> of(Stair stair, List<Part> parts, String job, Length kerf) {
        Graduation graduation = stair.brief().tape().graduation();
        List<Need> needs = new ArrayList<>();
        for (Part part : parts) {
            if (!part.id().equals(PartId.PITCH_BOARD) && part.length().isPositive()) {
                Optional<Need.Nested> nested = part.id().equals(PartId.STRINGER) && part.count() > 1
                        ? Optional.of(nested(stair, kerf, graduation))
                        : Optional.empty();
                needs.add(new Need(
                        job + part.id().mark(),
                        part.name(),
                        use(part.id()),
                        part.count(),
                        part.thickness(),
                        part.width(),
                        part.length().roundedUp(graduation),
                        Joints.of(stair, part),
                        nested));
            }
        }
        return needs;
    }

    private static Use use(PartId id) {
        return switch (id.mark().replaceAll("[0-9]", "")) {
            case "S" -> Use.STRINGERS;
            case "T" -> Use.TREADS;
            case "H" -> Use.HEAD;
            case "F" -> Use.FOOT;
            case "GP", "LP", "SP" -> Use.POSTS;
            case "GT", "GB", "LT", "LB" -> Use.RAILS;
            case "GI", "LI" -> Use.INFILL;
            case "HR" -> Use.HANDRAIL;
            default -> Use.RISERS;
        };
    }

    /** Both trimmings, and two outlines as close as a cut allows. */
    private static Need.Nested nested(Stair stair, Length kerf, Graduation graduation) {
        Length trim = stair.brief().stringers().trim().times(2);
        Nesting nesting = Nesting.of(StringerLayout.of(stair).outline(), kerf);
        return new Need.Nested(nesting.extent().plus(trim).roundedUp(graduation), nesting.meeting());
    }
}
