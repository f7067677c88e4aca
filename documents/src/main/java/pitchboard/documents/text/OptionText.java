package pitchboard.documents.text;

import java.util.stream.Collectors;
import pitchboard.measure.Length;
import pitchboard.measure.QuantityText;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.measure.TrueText;
import pitchboard.stair.Objection;
import pitchboard.stair.Option;
import pitchboard.stair.Stair;
import pitchboard.stair.StepFormula;

/** One possible stair in words. */
record OptionText(Tape tape, Lines lines) {
    void option(Option option) {
        lines.item("  ", sizes(option));
        lines.item("      ", reasons(option));
    }

    String sizes(Option option) {
        Stair stair = option.stair();
        return stair.flight().risers() + " risers of " + size(stair.rise()) + " with a run of " + size(stair.run())
                + ", pitch " + QuantityText.write(stair.pitch(), tape, Tape.Style.PLAIN)
                + option.spaceLeft()
                        .map(left -> left.isNegative()
                                ? ", " + size(left.negated()) + " too long"
                                : ", " + size(left) + " of the space left")
                        .orElse("");
    }

    private String size(Length length) {
        return TapeWriter.write(length, tape, Tape.Style.PLAIN);
    }

    private static String reasons(Option option) {
        if (option.comforts().isEmpty()) {
            return "meets none of the step formulas";
        }
        return "meets " + option.comforts().stream().map(OptionText::formula).collect(Collectors.joining("; "));
    }

    private static String formula(StepFormula formula) {
        return formula.expression().replace("×", "x") + " ("
                + formula.clause().edition().shortName() + ")";
    }

    void objections(Option option) {
        option.objections().forEach(this::objection);
    }

    private void objection(Objection objection) {
        String measured = TrueText.writeApart(objection.measured(), objection.limit(), tape, Tape.Style.PLAIN);
        String limit = TrueText.writeApart(objection.limit(), objection.measured(), tape, Tape.Style.PLAIN);
        lines.item(
                "    x ",
                objection.what() + " " + measured + ", the limit is " + limit + " [" + objection.citation() + "]: "
                        + objection.change().write(tape, Tape.Style.PLAIN));
    }
}
