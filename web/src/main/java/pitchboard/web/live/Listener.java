package pitchboard.web.live;

import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;

/** One page that listens, told by a thread of its own: a phone that went out of reach holds up nobody else. */
final class Listener {
    static final int MOST_WAITING = 100;
    /** A line that no longer stands is found out by then, on both ends. */
    private static final int SECONDS_OF_SILENCE = 15;

    private static final int MILLISECONDS_TO_END = 1_000;

    private record Event(String name, String data) {}

    private final Line line;
    private final Optional<String> device;
    private final BlockingQueue<Event> waiting = new ArrayBlockingQueue<>(MOST_WAITING);
    private final Thread teller = new Thread(this::tellOn, "live");

    Listener(Line line, Optional<String> device) {
        this.line = line;
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

    /** Waits until nothing more is said, but not for a line that is stuck. */
    void await() {
        try {
            teller.join(MILLISECONDS_TO_END);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** False when it hears nothing any more, or is too far behind: then it has to begin anew. */
    boolean tell(String name, String data) {
        return !line.isCut() && waiting.offer(new Event(name, data));
    }

    private void tellOn() {
        try {
            line.sign();
            while (!line.isCut()) {
                Event event = waiting.poll(SECONDS_OF_SILENCE, TimeUnit.SECONDS);
                if (event == null) {
                    line.sign();
                } else {
                    line.say(event.name(), event.data());
                }
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            line.cut();
        }
    }
}
