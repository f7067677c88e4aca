package pitchboard.web.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
final class ListenerTest {
    /** Says nothing until it may. */
    private static final class SlowLine implements Line {
        private final List<String> said = new CopyOnWriteArrayList<>();
        private final CountDownLatch begun = new CountDownLatch(1);
        private final CountDownLatch mayGoOn = new CountDownLatch(1);
        private final CountDownLatch cut = new CountDownLatch(1);

        @Override
        public void say(String event, String data) {
            begun.countDown();
            try {
                mayGoOn.await();
                said.add(event + " " + data);
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void sign() {}

        @Override
        public boolean isCut() {
            return cut.getCount() == 0;
        }

        @Override
        public void cut() {
            cut.countDown();
        }
    }

    private final SlowLine line = new SlowLine();
    private final Listener listener = new Listener(line, Optional.empty());

    @Test
    void whoever_tells_does_not_wait_for_a_slow_line_and_drops_it_when_too_much_waits() throws Exception {
        listener.start();
        assertThat(listener.tell("saved", "0")).isTrue();
        line.begun.await();
        for (int i = 1; i <= Listener.MOST_WAITING; i++) {
            assertThat(listener.tell("saved", "" + i)).isTrue();
        }
        assertThat(listener.tell("saved", "one too many")).isFalse();
        listener.stop();
        line.cut.await();
        assertThat(listener.tell("saved", "late")).isFalse();
    }

    @Test
    void everything_is_said_in_its_order() throws Exception {
        listener.tell("saved", "1");
        listener.tell("ticked", "2");
        line.mayGoOn.countDown();
        listener.start();
        while (line.said.size() < 2) {
            Thread.sleep(1);
        }
        assertThat(line.said).containsExactly("saved 1", "ticked 2");
        listener.stop();
        line.cut.await();
    }
}
