package pitchboard.web.wire;

import io.javalin.http.Context;
import java.util.List;
import pitchboard.documents.json.Json;

/** A request that is not done, and why; the server answers it with its status and its reasons. */
public final class Refusal extends Exception {
    private final int status;
    private final transient List<Reason> reasons;

    /**
     * One reason.
     *
     * @param field which line of the request, or of a job in it; empty when it is about the whole
     * @param words what is wrong and what would be right
     */
    public record Reason(String field, String words) {
        Json json() {
            return Json.object().says("field", field).says("words", words);
        }
    }

    public Refusal(int status, List<Reason> reasons) {
        super(status + " " + reasons);
        this.status = status;
        this.reasons = List.copyOf(reasons);
    }

    public Refusal(int status, String words) {
        this(status, List.of(new Reason("", words)));
    }

    /** Nothing of this kind is here. */
    public static Refusal missing(String what) {
        return new Refusal(404, "there is no such " + what);
    }

    public int status() {
        return status;
    }

    public void answer(Context context) {
        Reply.send(context.status(status), json());
    }

    /** The reasons as JSON. */
    public String text() {
        return json().text();
    }

    private Json json() {
        return Json.object().with("problems", Json.list(reasons, Reason::json));
    }
}
