package pitchboard.intake;

import pitchboard.rules.Fact;
import pitchboard.rules.Unknown;

/** Where in a job file the answer belongs that a rule waits for. */
public final class Asking {
    private static final String ABOVE = "measured > landing above > ";
    private static final String BELOW = "measured > landing below > ";
    private static final String SEEN = "measured > looked at > ";
    private static final String RAIL = "wanted > handrail > ";
    private static final String GUARD = "wanted > guard > ";

    private Asking() {}

    /** The keys that lead there, outermost first; items of a list by number from 1. */
    public static String field(Unknown unknown) {
        return switch (unknown.fact()) {
            case RISE -> "measured > rise";
            case LEVEL_LINE -> "measured > level line > sure";
            case RUN_AVAILABLE -> "measured > run available";
            case OVERHEAD -> "measured > overhead";
            case UNDERSIDE -> "measured > overhead > " + unknown.item() + " > underside";
            case DECKING_OVERHANG -> "measured > header > decking overhang";
            case TOP_LANDING_DEPTH -> ABOVE + "depth";
            case TOP_LANDING_WIDTH -> ABOVE + "width";
            case TOP_LANDING_FALL -> ABOVE + "fall";
            case TOP_DOOR -> ABOVE + "door";
            case CLEAR_OF_TOP_DOOR -> ABOVE + "clear of door";
            case BOTTOM_LANDING_DEPTH -> BELOW + "depth";
            case BOTTOM_LANDING_WIDTH -> BELOW + "width";
            case BOTTOM_LANDING_FALL -> BELOW + "fall";
            case BOTTOM_DOOR -> BELOW + "door";
            case CLEAR_OF_BOTTOM_DOOR -> BELOW + "clear of door";
            case LIGHT -> "measured > light";
            case FALL_BESIDE -> "measured > ground beside is lower by";
            case EDGE_ABOVE -> "measured > edge above";
            case NOSING -> "wanted > nosing";
            case RAIL_HEIGHT -> RAIL + "height";
            case RAIL_GRIP -> RAIL + "grip";
            case RAIL_REACH -> RAIL + "reaches in";
            case RAIL_TO_WALL -> RAIL + "gap to wall";
            case RAIL_FULL_LENGTH -> RAIL + "full length";
            case RAIL_BRACKETS -> RAIL + "brackets";
            case GUARD_HEIGHT -> GUARD + "height";
            case GUARD_OPENING -> GUARD + "gap";
            case GUARD_TRIANGLE -> GUARD + "triangle";
            default -> SEEN + seen(unknown.fact());
        };
    }

    private static String seen(Fact fact) {
        return switch (fact) {
            case FLOOR_EDGE -> "floor edge over treads";
            case HARD_FINISH -> "finish is hard";
            case SPACE_BELOW -> "closed below";
            case LINING_BELOW -> "lining below";
            case SILL_DROP -> "sill above landing";
            case EGRESS_DOOR -> "required way out";
            case LIGHT_ENOUGH -> "bright enough";
            case ANCHORED -> "anchored";
            case TREATED_WOOD -> "wood fit for ground";
            case WOOD_ABOVE_SOIL -> "wood above soil";
            case FASTENERS -> "fasteners fit";
            case FOOTING_DEPTH -> "footing depth";
            case FROST_DEPTH -> "frost depth";
            case FOOTHOLDS -> "guard gives no foothold";
            case SLIP_CLASS -> "slip class fits";
            case GROUND_BESIDE -> "ground beside falls";
            case GROUND_ALONG_RISER -> "ground along bottom riser";
            case END_RISE_STRIPE -> "stripe on bottom step";
            case RAIL_UNDERSIDE -> "rail underside free";
            default -> throw new IllegalArgumentException("no line says " + fact);
        };
    }
}
