package pitchboard.web;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;

/** What the server answered. */
public record Answer(HttpResponse<byte[]> response) {
    public int status() {
        return response.statusCode();
    }

    public String body() {
        return new String(response.body(), StandardCharsets.UTF_8);
    }

    public byte[] bytes() {
        return response.body();
    }

    public String header(String name) {
        return response.headers().firstValue(name).orElse("");
    }

    /** The words of the first problem. */
    public String trouble() {
        return text("problems", "1", "words");
    }

    /** A value inside the JSON, by names, and by numbers from 1 in lists. */
    public String text(String... way) {
        Written value = value(way);
        return value.match(
                Written.Text::value,
                group -> "a group",
                sequence -> "a list of " + sequence.items().size());
    }

    public Written value(String... way) {
        Transcript read = JsonReader.read(body());
        if (read instanceof Transcript.Illegible) {
            throw new AssertionError(status() + " " + body());
        }
        Written at = ((Transcript.Legible) read).written();
        for (String step : way) {
            at = step(at, step);
        }
        return at.anywhere();
    }

    private Written step(Written from, String step) {
        if (from instanceof Written.Sequence sequence) {
            return sequence.items().get(Integer.parseInt(step) - 1);
        }
        return ((Written.Group) from)
                .findEntry(step)
                .orElseThrow(() -> new AssertionError("no " + step + " in " + status() + " " + body()))
                .value();
    }
}
