package pitchboard.sheet.buying;

import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.buying.order.BuyingList;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;

/**
 * Everything the buying papers are drawn from.
 *
 * @param title of the job, or of the first of several
 * @param rulebook its short name, as the other papers of the job have it
 * @param fingerprint of jobs and price list together
 */
public record Errand(Title title, Tape tape, Paper paper, String rulebook, String fingerprint, BuyingList list) {
    String size(Length length) {
        return TapeWriter.write(length, tape, Tape.Style.PRINTED);
    }

    /** A position read from one end of a board. */
    String running(Length length) {
        return TapeWriter.writeRunning(length, tape, Tape.Style.PRINTED);
    }
}
