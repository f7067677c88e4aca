package pitchboard.documents.text;

import java.util.List;
import pitchboard.job.Outcome;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
import pitchboard.stair.Choices;
import pitchboard.stair.Option;

/** Which stairs are possible, best first; or that none is, and the smallest changes that would help. */
public final class ChoicesText {
    private static final int MOST_COUNTS = 8;
    private static final int MOST_MISSES = 6;

    private final Outcome outcome;
    private final Choices choices;
    private final Tape tape;
    private final Lines lines = new Lines();
    private final OptionText options;

    private ChoicesText(Outcome outcome) {
        this.outcome = outcome;
        this.choices = outcome.choices();
        this.tape = outcome.job().brief().tape();
        this.options = new OptionText(tape, lines);
    }

    public static String write(Outcome outcome) {
        return new ChoicesText(outcome).write();
    }

    private String write() {
        String book = outcome.job().rulebook().name();
        lines.heading(outcome.job().brief().title().job());
        if (choices.allowed().isEmpty()) {
            nothing(book);
        } else {
            lines.heading("Allowed under " + book + " and fitting the space, best first");
            counts();
        }
        if (!choices.otherwiseAllowed().isEmpty()) {
            lines.heading("Allowed too, but not as the job file fixes it");
            choices.otherwiseAllowed().stream().limit(3).forEach(options::option);
        }
        nearMisses();
        return lines.text();
    }

    private void nothing(String book) {
        boolean fixed = outcome.job().brief().wishes().fixesSomething();
        lines.heading(
                fixed
                        ? "No stair fits as the job file fixes it, under " + book
                        : "No stair fits, under " + book + " and in the space there is");
        choices.chosen().ifPresent(least -> {
            lines.item("  ", "the least wrong with it: " + options.sizes(least));
            options.objections(least);
        });
    }

    private void counts() {
        List<Option> best = choices.bestOfEachCount();
        best.stream().limit(MOST_COUNTS).forEach(option -> {
            options.option(option);
            lines.item("      ", runs(option.stair().flight().risers()));
        });
    }

    private String runs(int risers) {
        List<Option> same = choices.withRisers(risers);
        String shortest = size(same.get(0).stair().run());
        String longest = size(same.get(same.size() - 1).stair().run());
        return same.size() == 1
                ? "with " + risers + " risers no other run is allowed"
                : "with " + risers + " risers, runs from " + shortest + " to " + longest + " are allowed";
    }

    private String size(Length length) {
        return TapeWriter.write(length, tape, Tape.Style.PLAIN);
    }

    private void nearMisses() {
        if (choices.nearMisses().isEmpty()) {
            return;
        }
        lines.heading("Near misses, and what would make each fit");
        choices.nearMisses().stream().limit(MOST_MISSES).forEach(option -> {
            lines.item("  ", options.sizes(option));
            options.objections(option);
        });
    }
}
