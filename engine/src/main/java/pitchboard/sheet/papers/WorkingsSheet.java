package pitchboard.sheet.papers;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pitchboard.measure.Decimals;
import pitchboard.measure.ExactText;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.QuantityText;
import pitchboard.measure.Tape;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.subject.Subject;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.source.Figure;

/** Every figure with its working, so that anybody can check it with a pencil. */
final class WorkingsSheet {
    private static final int MOST_DIGITS = 26;
    private static final int NEAR_PLACES = 4;

    private WorkingsSheet() {}

    static List<Draft> of(Subject subject, Frame frame) {
        Table table = Table.of(
                Column.left("", 12).bold(),
                Column.left("what", 66),
                Column.left("how", 44),
                Column.rest("with"),
                Column.right("exactly", 34),
                Column.right("on the tape", 27).bold());
        Stream.concat(subject.worksheet().stream(), subject.carried().worksheet().stream())
                .forEach(section -> {
                    table.heading(section.title());
                    section.figures().forEach(figure -> table.row(cells(subject, figure)));
                });
        return table.over(page -> frame.draft("workings", page, "Worksheet"));
    }

    private static String[] cells(Subject subject, Figure figure) {
        return new String[] {
            figure.symbol(),
            figure.meaning(),
            figure.expression().isEmpty() ? figure.source().citation() : figure.expression(),
            inputs(subject, figure),
            exactly(subject, figure.value()),
            QuantityText.write(figure.value(), subject.tape(), Tape.Style.PRINTED)
        };
    }

    private static String inputs(Subject subject, Figure figure) {
        return figure.inputs().stream()
                .map(input -> input.symbol() + " = " + exactly(subject, input.value()))
                .collect(Collectors.joining(",  "))
                .replace("= ≈", "≈");
    }

    /** A sag or another length that was reckoned near has a fraction of a hundred digits, which says no more. */
    private static String exactly(Subject subject, Quantity quantity) {
        if (!(quantity instanceof Length length)) {
            return subject.words(quantity);
        }
        String exact = ExactText.write(length, subject.tape().units());
        return (exact.length() > MOST_DIGITS ? near(subject, length) : exact).replace('-', '−');
    }

    private static String near(Subject subject, Length length) {
        return subject.tape().isInches()
                ? "≈ " + Decimals.fixed(length.inInches(), NEAR_PLACES) + " in"
                : "≈ " + Decimals.fixed(length.inMm(), NEAR_PLACES) + " mm";
    }
}
