package pitchboard.intake.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Reckoned;

/** The kinds of value a line can have, by name. */
public final class Forms {
    private Forms() {}

    /** Free words. */
    public static Form<String> words(int longest, String example) {
        return new TextForm(longest, example);
    }

    /** Several, each behind a dash. */
    public static <T> Form<List<T>> list(Form<T> item, int least, int most) {
        return new ListForm<>(item, least, most);
    }

    /** A word that stands for one value, or another form's value. */
    public static <T> Form<T> wordOr(String word, T value, Form<T> other) {
        return new WordOr<>(word, value, other);
    }

    /** A word that stands for no value at all, or a value. */
    public static <T> Form<Optional<T>> wordForNone(String word, Form<T> other) {
        return new WordOr<>(word, Optional.empty(), new Maybe<>(other));
    }

    /** A length, where no length at all may also be written as {@code none}. */
    public static Form<Length> lengthOrNone(Form<Length> length) {
        return new WordOr<>("none", Length.ZERO, length);
    }

    /** The finest line of the tape. */
    public static Form<Graduation> graduation() {
        return new GraduationForm();
    }

    /** A limit of a rule: a length, an angle, a slope, an area or a number of things. */
    public static Form<Quantity> limit() {
        return new LimitForm();
    }

    /** A load spread over an area, above zero, with its unit. */
    public static Form<Reckoned> loadOnArea() {
        return LoadForm.ON_AREA;
    }

    /** A load at one place, above zero, with its unit. */
    public static Form<Reckoned> loadAtPoint() {
        return LoadForm.AT_POINT;
    }

    /**
     * A word or number that means what the function makes of it.
     *
     * @param read empty for text that means nothing
     * @param write text that is read as the same value again
     * @param wanted what may be written, as a phrase
     */
    public static <T> Form<T> parsed(
            Function<String, Optional<T>> read, Function<T, String> write, String wanted, String example) {
        return new ParsedForm<>(read, write, wanted, example);
    }

    /** A whole number of things. */
    public static Form<Integer> count(int least, int most, int example) {
        return new CountForm(least, most, example);
    }

    public static Form<Boolean> yesOrNo() {
        return ChoiceForm.of("yes", true).or("no", false);
    }
}
