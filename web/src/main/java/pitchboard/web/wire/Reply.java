package pitchboard.web.wire;

import io.javalin.http.Context;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.Written;

/** Writes answers. */
public final class Reply {
    public static final String JSON = "application/json; charset=utf-8";

    private Reply() {}

    public static void send(Context context, Json answer) {
        context.contentType(JSON).result(answer.text());
    }

    /** What somebody wrote, every value as the text that was typed. */
    public static Json written(Written written) {
        return written.match(
                text -> Json.words(text.value()),
                group -> {
                    Json.Fields fields = Json.object();
                    group.entries().forEach(entry -> fields.with(entry.key(), written(entry.value())));
                    return fields;
                },
                sequence -> Json.list(sequence.items(), Reply::written));
    }
}
