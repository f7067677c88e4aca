package pitchboard.intake.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** One of a few words, each of which stands for one value. Capitals do not count. */
public final class ChoiceForm<T> implements Form<T> {
    /** Beyond so many it is no help to name those that are equally near. */
    private static final int MOST_NEAR = 5;

    private final Map<String, T> values;

    private ChoiceForm(Map<String, T> values) {
        this.values = values;
    }

    public static <T> ChoiceForm<T> of(String words, T value) {
        return new ChoiceForm<T>(new LinkedHashMap<>()).or(words, value);
    }

    public ChoiceForm<T> or(String words, T value) {
        Map<String, T> more = new LinkedHashMap<>(values);
        more.put(words, value);
        return new ChoiceForm<>(more);
    }

    @Override
    public Optional<T> read(Written written, Proof proof) {
        String wanted = proof.phrase(this);
        Optional<Written.Text> text = proof.findText(written, wanted);
        Optional<T> value = text.flatMap(typed -> find(typed.value()));
        if (value.isEmpty() && text.isPresent()) {
            List<String> near = Nearest.findAll(text.get().value(), List.copyOf(values.keySet()));
            proof.note(written, near.isEmpty() || near.size() > MOST_NEAR ? wanted : oneOf(near));
        }
        return value;
    }

    private Optional<T> find(String typed) {
        return values.entrySet().stream()
                .filter(choice -> choice.getKey().equalsIgnoreCase(typed))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    @Override
    public Written write(T value, Tape.Units units) {
        return new Written.Text(word(value));
    }

    /** What stands for a value. */
    public String word(T value) {
        return values.entrySet().stream()
                .filter(choice -> choice.getValue().equals(value))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no word stands for " + value));
    }

    @Override
    public Shape shape() {
        return Shape.of(Shape.Kind.CHOICE, List.copyOf(values.keySet()));
    }

    @Override
    public String wanted(Tape.Units units) {
        return listed(List.copyOf(values.keySet()));
    }

    private static String oneOf(List<String> near) {
        return near.size() == 1 ? Problem.quoted(near.get(0)) : listed(near);
    }

    private static String listed(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    @Override
    public String example(Tape.Units units) {
        return values.keySet().iterator().next();
    }
}
