package pitchboard.sheet.type;

import java.util.List;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Run;
import pitchboard.sheet.Spot;

/**
 * One line of set text, not yet at a place.
 *
 * @param reads the same as plain characters
 */
public record TypeLine(List<Run> runs, double width, String reads) {
    public TypeLine {
        runs = List.copyOf(runs);
    }

    /** Puts the line on the paper, on a baseline that turns about the given spot. */
    public Mark.Text at(PartRef of, Spot spot, double turn, Align align) {
        Spot start = spot.toward(turn, -width * align.share());
        return new Mark.Text(of, start, turn, runs, reads);
    }
}
