package pitchboard.documents.json;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.carry.SecondLook;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.parts.Part;
import pitchboard.parts.Worksheet;
import pitchboard.source.Figure;

/** Everything that came of a job. */
public final class OutcomeJson {
    /** Raised when a field is renamed or removed. */
    private static final int FORMAT = 1;

    private final Outcome outcome;
    private final Optional<SecondLook> look;
    private final QuantityJson quantities;

    private OutcomeJson(Outcome outcome, Optional<SecondLook> look) {
        this.outcome = outcome;
        this.look = look;
        this.quantities = new QuantityJson(outcome.job().brief().tape());
    }

    /** @param look what finite elements say, where they were asked for */
    public static String write(Outcome outcome, Optional<SecondLook> look) {
        return of(outcome, look).text();
    }

    /** To be put into a larger answer. */
    public static Json of(Outcome outcome, Optional<SecondLook> look) {
        return new OutcomeJson(outcome, look).whole();
    }

    private Json whole() {
        Job job = outcome.job();
        Json.Fields fields = Json.object()
                .with("format", Json.number(FORMAT))
                .says("job", job.brief().title().job())
                .says("for", job.brief().title().client())
                .says("place", job.brief().title().place())
                .says("date", job.brief().title().date())
                .says("inputs", job.fingerprint().text())
                .says("rulebook", job.rulebook().name())
                .says("outcome", outcome.match(designed -> "designed", none -> "no stair fits"))
                .with("choices", new ChoicesJson(quantities).of(outcome.choices()));
        return outcome.match(designed -> designed(fields, designed), none -> fields);
    }

    private Json.Fields designed(Json.Fields fields, Outcome.Designed designed) {
        return fields.with("failing", Json.truth(designed.hasFailures()))
                .with("stair", new StairJson(quantities).stair(designed.stair()))
                .with("stringer", new StairJson(quantities).stringer(designed.stair()))
                .with("guard", new GuardJson(quantities).guard(designed.stair()))
                .with("edgeGuards", new GuardJson(quantities).edges(designed.stair()))
                .with("handrail", new GuardJson(quantities).handrail(designed.stair()))
                .with("falls", new GuardJson(quantities).falls(designed.stair()))
                .with("pieces", Json.list(designed.parts(), this::piece))
                .with("findings", new FindingsJson(quantities).of(designed.findings()))
                .with("strength", new StrengthJson(quantities).of(designed.carried(), look))
                .with("worksheet", Json.list(sections(designed), this::section));
    }

    private static List<Worksheet.Section> sections(Outcome.Designed designed) {
        return Stream.concat(designed.worksheet().stream(), designed.carried().worksheet().stream())
                .toList();
    }

    private Json piece(Part part) {
        return Json.object()
                .says("mark", part.id().mark())
                .says("name", part.name())
                .says("purpose", part.purpose())
                .with("pieces", Json.number(part.count()))
                .with("thickness", quantities.of(part.thickness()))
                .with("width", quantities.of(part.width()))
                .with("length", quantities.of(part.length()));
    }

    private Json section(Worksheet.Section section) {
        return Json.object().says("title", section.title()).with("figures", Json.list(section.figures(), this::figure));
    }

    private Json figure(Figure figure) {
        return Json.object()
                .says("symbol", figure.symbol())
                .says("meaning", figure.meaning())
                .says("expression", figure.expression())
                .with(
                        "inputs",
                        Json.list(
                                figure.inputs(),
                                input -> Json.object()
                                        .says("symbol", input.symbol())
                                        .with("value", quantities.of(input.value()))))
                .with("value", quantities.of(figure.value()))
                .says("source", figure.source().citation());
    }
}
