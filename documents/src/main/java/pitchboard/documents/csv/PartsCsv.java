package pitchboard.documents.csv;

import pitchboard.job.Outcome;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.parts.Part;

/** Every piece of a stair. Lengths are plain decimal numbers, in the unit the head names. */
public final class PartsCsv {
    private static final int PLACES = 4;

    private PartsCsv() {}

    public static String write(Outcome.Designed job) {
        boolean inches = job.job().brief().tape().isInches();
        String unit = inches ? " in" : " mm";
        Csv csv = new Csv()
                .row("mark", "pieces", "name", "thickness" + unit, "width" + unit, "length" + unit, "what it is for");
        for (Part part : job.parts()) {
            csv.row(
                    part.id().mark(),
                    Integer.toString(part.count()),
                    part.name(),
                    number(part.thickness(), inches),
                    number(part.width(), inches),
                    number(part.length(), inches),
                    part.purpose());
        }
        return csv.text();
    }

    private static String number(Length length, boolean inches) {
        return Decimals.trimmed(inches ? length.inInches() : length.inMm(), PLACES);
    }
}
