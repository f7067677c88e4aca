package pitchboard.web.live;

import io.javalin.http.sse.SseClient;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;

/** One page that listens, told by a thread of its own: a phone that went out of reach holds up nobody else. */
final class Listener {
    private static final int MOST_WAITING = 100;
    /** Shows that the line still stands, on both ends. */
    private static final int SECONDS_OF_SILENCE = 15;

    private record Event(String name, String data) {}

    private final SseClient client;
    private final Optional<String> device;
    private final BlockingQueue<Event> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
    private final Thread teller = new Thread(this::tellOn, "live");

    Listener(SseClient client, Optional<String> device) {
        this.client = client;
        this.device = device;
        teller.setDaemon(true);
    }

    Optional<String> device() {
        return device;
    }

    void start() {
        teller.start();
    }

    void stop() {
        teller.interrupt();
    }

    /** False when it hears nothing any more, or is too far behind: then it has to begin anew. */
    boolean tell(String name, String data) {
        return !client.terminated() && waiting.offer(new Event(name, data));
    }

    private void tellOn() {
        try {
            client.sendComment("listening");
            while (!client.terminated()) {
                Event event = waiting.poll(SECONDS_OF_SILENCE, TimeUnit.SECONDS);
                if (event == null) {
                    client.sendComment("still here");
                } else {
                    client.sendEvent(event.name(), event.data());
                }
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            client.close();
        }
    }
}
