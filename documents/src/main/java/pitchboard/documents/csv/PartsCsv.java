package pitchboard.documents.csv;

import pitchboard.job.Outcome;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.parts.Part;

/** Every piece of a stair. Lengths are as read off the crew's tape, plain decimal numbers in the unit the head names. */
public final class PartsCsv {
    private static final int PLACES = 4;

    private PartsCsv() {}

    public static String write(Outcome.Designed job) {
        Tape tape = job.job().brief().tape();
        String unit = tape.isInches() ? " in" : " mm";
        Csv csv = new Csv()
                .row("mark", "pieces", "name", "thickness" + unit, "width" + unit, "length" + unit, "what it is for");
        for (Part part : job.parts()) {
            csv.row(
                    part.id().mark(),
                    Integer.toString(part.count()),
                    part.name(),
                    number(part.thickness(), tape),
                    number(part.width(), tape),
                    number(part.length(), tape),
                    part.purpose());
        }
        return csv.text();
    }

    private static String number(Length length, Tape tape) {
        Length read = length.rounded(tape.graduation());
        return Decimals.trimmed(tape.isInches() ? read.inInches() : read.inMm(), PLACES);
    }
}
