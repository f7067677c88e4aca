package pitchboard.web.live;

import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import pitchboard.documents.json.Json;
import pitchboard.web.guarding.Caller;

/** Everybody who listens. */
public final class Live implements AutoCloseable {
    private static final int MOST_LISTENERS = 200;

    private final List<Listener> listeners = new CopyOnWriteArrayList<>();

    /** Begins to tell somebody; the oldest listener has to go when there are too many. */
    public void listen(SseClient client) {
        Listener listener =
                new Listener(new EventLine(client), Caller.of(client.ctx()).device());
        listeners.add(listener);
        client.onClose(() -> {
            listener.stop();
            listeners.remove(listener);
        });
        client.keepAlive();
        listener.start();
        while (listeners.size() > MOST_LISTENERS) {
            drop(listeners.get(0));
        }
    }

    /** A job has a new version. */
    public void saved(String id, int version, String device) {
        Json event = Json.object()
                .says("id", id)
                .with("version", Json.number(version))
                .says("device", device);
        tell("saved", event);
    }

    /** Something was ticked off, or not any more. */
    public void ticked(String id, String tick, boolean done) {
        tell("ticked", Json.object().says("id", id).says("tick", tick).with("done", Json.truth(done)));
    }

    /** The list of jobs has changed. */
    public void listed() {
        tell("listed", Json.object());
    }

    private void tell(String name, Json event) {
        String data = event.text();
        listeners.stream().filter(listener -> !listener.tell(name, data)).forEach(this::drop);
    }

    private void drop(Listener listener) {
        listeners.remove(listener);
        listener.stop();
    }

    /** Tells a device nothing more. */
    public void hangUp(String device) {
        listeners.stream()
                .filter(listener -> listener.device().equals(Optional.of(device)))
                .forEach(this::drop);
    }

    /** How many listen. */
    public int listeners() {
        return listeners.size();
    }

    /** Ends all lines, and waits until they are: a server that stops takes away what they end with. */
    @Override
    public void close() {
        List<Listener> last = List.copyOf(listeners);
        last.forEach(this::drop);
        last.forEach(Listener::await);
    }
}
