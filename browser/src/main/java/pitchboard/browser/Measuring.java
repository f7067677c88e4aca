package pitchboard.browser;

import java.util.List;
import java.util.function.Supplier;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.measure.Decimals;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeReader;
import pitchboard.measure.TapeReading;
import pitchboard.measure.TapeWriter;

/** Says what a text off the tape means in both units. */
final class Measuring implements Task {
    private static final int PLACES = 2;

    @Override
    public String name() {
        return "length";
    }

    @Override
    public List<String> keys() {
        return List.of("text", "units");
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        String text = asked.words("text", "a length as a job file has it");
        Tape.Units units = asked.units();
        return () -> TapeReader.readSigned(text, units).match(read -> answer(read.length()), Measuring::problem);
    }

    private static Json answer(Length length) {
        return Json.object()
                .says("inches", inches(length))
                .says("millimetres", millimetres(length))
                .with("mm", Json.number(length.approxMm()));
    }

    private static String inches(Length length) {
        Length marked = length.rounded(Graduation.SIXTY_FOURTH_INCH);
        return marked.equals(length)
                ? TapeWriter.feetAndInches(length, Graduation.SIXTY_FOURTH_INCH, Tape.Style.PLAIN)
                : "≈ " + TapeWriter.feetAndInches(length, Graduation.SIXTEENTH_INCH, Tape.Style.PLAIN);
    }

    private static String millimetres(Length length) {
        boolean exact = length.inMm().times(Ratio.of(100)).isWhole();
        return (exact ? "" : "≈ ") + Decimals.trimmed(length.inMm(), PLACES) + " mm";
    }

    private static Json problem(TapeReading.Unread unread) {
        Problem problem = new Problem(new Spot(1, unread.column()), "text", unread.found(), unread.expected());
        return AnswerJson.problems("request", List.of(problem));
    }
}
