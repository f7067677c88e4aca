package pitchboard.intake.form;

import pitchboard.measure.Length;
import pitchboard.measure.Ratio;

/**
 * The one table of how small and how large a number may be. Far wider than any code or habit: what lies outside is a
 * slip of the pen, and is better asked about than cut. What a stair may be is for rules and geometry to say.
 *
 * <p>Each line: least, most, and an example in inches and in millimetres. Common practice, no source.
 */
public final class Bounds {
    // Measured.
    public static final Form<Length> RISE = length("3\"", "30'", "8' 9 3/4\"", "2686 mm");
    public static final Form<Length> FINISH = length("0", "12\"", "3/4\"", "20 mm");
    public static final Form<Length> RUN_AVAILABLE = length("4\"", "60'", "11' 6\"", "3500 mm");
    public static final Form<Length> READING_OUT = length("0", "60'", "6'", "1800 mm");
    public static final Form<Length> UNDERSIDE = length("12\"", "60'", "7' 8\"", "2340 mm");
    public static final Form<Length> OVERHEAD_OUT = length("-10'", "60'", "9' 6\"", "2900 mm");
    public static final Form<Length> HEADER_DEPTH = length("1 1/2\"", "4'", "9 1/4\"", "240 mm");
    public static final Form<Length> DECKING = length("0", "12\"", "1 1/2\"", "38 mm");
    public static final Form<Length> DECKING_OVERHANG = length("0", "12\"", "1 1/4\"", "30 mm");
    public static final Form<Length> LANDING = length("1\"", "100'", "3' 6\"", "1000 mm");
    public static final Form<Length> LOWER_BESIDE = length("0", "30'", "8\"", "200 mm");
    public static final Form<Length> FLOOR_EDGE = length("0", "24\"", "3\"", "75 mm");
    public static final Form<Length> SILL_DROP = length("0", "4'", "1 1/2\"", "38 mm");
    public static final Form<Length> SOIL = length("0", "12'", "12\"", "300 mm");
    public static final Form<Ratio> FALL = new SlopeForm(Ratio.of(1, 4));
    public static final Form<Ratio> GROUND_BESIDE = new SlopeForm(Ratio.of(4));
    public static final Form<Length> STRIPE = length("0", "12\"", "1\"", "25 mm");

    // Wanted.
    public static final Form<Length> FLIGHT_WIDTH = length("12\"", "12'", "40\"", "900 mm");
    public static final Form<Length> BOARD_THICKNESS = length("1/4\"", "6\"", "1 1/2\"", "38 mm");
    public static final Form<Length> BOARD_WIDTH = length("3/4\"", "24\"", "5 1/2\"", "140 mm");
    public static final Form<Length> TREAD_THICKNESS = length("1/2\"", "4\"", "1 1/2\"", "38 mm");
    public static final Form<Length> TREAD_BOARD_WIDTH = length("2\"", "20\"", "11 1/4\"", "285 mm");
    public static final Range TREAD_WIDTH = Range.of("5\"", "24\"", "11 1/4\"", "285 mm");
    public static final Form<Length> TREAD_GAP = length("0", "1\"", "1/4\"", "6 mm");
    public static final Form<Length> RISER_THICKNESS = length("1/8\"", "2\"", "3/4\"", "18 mm");
    public static final Form<Length> NOSING_EDGE = length("1/32\"", "2\"", "3/8\"", "10 mm");
    public static final Form<Length> STRINGER_DEPTH = length("5\"", "24\"", "11 1/4\"", "295 mm");
    public static final Form<Length> STRINGER_THICKNESS = length("3/4\"", "6\"", "1 1/2\"", "47 mm");
    public static final Form<Length> TREAD_OVERHANG = length("0", "12\"", "1\"", "25 mm");
    public static final Form<Length> TRIM = length("0", "24\"", "1\"", "25 mm");
    public static final Form<Length> RAIL_HEIGHT = length("20\"", "60\"", "36\"", "900 mm");
    public static final Form<Length> RAIL_SECTION = length("1/2\"", "12\"", "1 1/2\"", "45 mm");
    public static final Form<Length> RAIL_REACH = length("0", "12\"", "3 1/4\"", "85 mm");
    public static final Form<Length> BRACKETS = length("6\"", "10'", "32\"", "800 mm");
    public static final Form<Length> GUARD_HEIGHT = length("20\"", "72\"", "36\"", "900 mm");
    public static final Form<Length> GUARD_GAP = length("0", "36\"", "4\"", "99 mm");
    public static final Form<Length> POST_SECTION = length("1\"", "8\"", "3 1/2\"", "90 mm");
    public static final Form<Length> POST_SPACING = length("12\"", "12'", "5' 0\"", "1500 mm");
    public static final Form<Length> BEHIND_NOSING = length("0", "24\"", "3\"", "75 mm");
    public static final Form<Length> ABOVE_NOSINGS = length("0", "24\"", "1\"", "25 mm");
    public static final Form<Length> INFILL_SECTION = length("1/8\"", "12\"", "1 1/2\"", "38 mm");
    public static final Form<Length> BALL = length("1/2\"", "36\"", "4\"", "100 mm");
    public static final Form<Length> EDGE = length("1\"", "60'", "4' 6\"", "1400 mm");
    public static final Form<Length> RAIL_RECESS = length("1/32\"", "6\"", "3/8\"", "10 mm");
    public static final Form<Length> RAIL_PAST = length("0", "6'", "12\"", "300 mm");
    public static final Form<Length> STEP_RUN = length("4\"", "24\"", "10\"", "250 mm");
    public static final Form<Length> STEP_RISE = length("3\"", "16\"", "7 1/2\"", "190 mm");

    public static final Form<Length> FASTENER_DIAMETER = length("1/16\"", "1 1/2\"", "3/8\"", "10 mm");
    public static final Form<Length> FASTENER_LENGTH = length("1/2\"", "24\"", "4\"", "100 mm");
    public static final Form<Length> HEADER_THICKNESS = length("3/4\"", "16\"", "3\"", "76 mm");
    public static final Form<Length> SUPPORT_AT = length("4\"", "60'", "5' 10\"", "1800 mm");

    // To be bought.
    public static final Form<Length> BOARD_LENGTH = length("1'", "60'", "12'", "3600 mm");
    public static final Form<Length> RACK_LENGTH = length("1\"", "60'", "4' 2 1/2\"", "1280 mm");
    public static final Form<Length> OVER_LENGTH = length("0", "12\"", "1/2\"", "10 mm");
    public static final Form<Length> KERF = length("0", "1/2\"", "1/8\"", "3 mm");
    public static final Form<Length> END_TRIM = length("0", "24\"", "1/2\"", "10 mm");
    public static final Form<Length> PAD_SIDE = length("12\"", "60'", "4'", "1200 mm");
    public static final Form<Length> PAD_THICKNESS = length("2\"", "4'", "4\"", "100 mm");
    public static final Form<Length> KEEP_FROM = length("1\"", "60'", "12\"", "300 mm");

    // Counts.
    public static final Form<Integer> TREAD_BOARDS = new CountForm(1, 6, 1);
    public static final Form<Integer> STRINGERS = new CountForm(2, 12, 3);
    public static final Form<Integer> FASTENERS = new CountForm(1, 40, 4);
    public static final Form<Integer> SCREW_GAUGE = new CountForm(6, 14, 10);
    public static final Form<Integer> RISERS = new CountForm(1, 60, 14);

    private Bounds() {}

    private static Form<Length> length(String least, String most, String inches, String millimetres) {
        return new LengthForm(Range.of(least, most, inches, millimetres));
    }
}
