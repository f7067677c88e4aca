package pitchboard.browser;

import java.util.List;
import java.util.Optional;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.Written;

/** A job, or a piece of one, as JSON of the same shape. */
final class WrittenJson {
    private WrittenJson() {}

    static Json of(Written written) {
        return written.match(
                text -> Json.words(text.value()),
                group -> of(group.entries()),
                sequence -> Json.list(sequence.items(), WrittenJson::of));
    }

    private static Json of(List<Written.Entry> entries) {
        Json.Fields fields = Json.object();
        entries.forEach(entry -> fields.with(entry.key(), of(entry.value())));
        return fields;
    }

    static Json of(Optional<Written> written) {
        return written.map(WrittenJson::of).orElseGet(Json::none);
    }
}
