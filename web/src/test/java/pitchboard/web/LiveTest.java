package pitchboard.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What one page saves, another hears. */
final class LiveTest {
    private static final int PATIENCE = 20_000;

    @TempDir
    Path folder;

    private Desk desk;

    /** A page that listens. */
    private static final class Ear implements AutoCloseable {
        private final Socket socket;
        private final BufferedReader lines;

        Ear(Desk desk) throws IOException {
            socket = new Socket(InetAddress.getLoopbackAddress(), desk.port());
            socket.setSoTimeout(PATIENCE);
            String request = "GET /api/live HTTP/1.1\r\nHost: 127.0.0.1:" + desk.port()
                    + "\r\nAccept: text/event-stream\r\nAccept-Encoding: gzip\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(UTF_8));
            lines = new BufferedReader(new InputStreamReader(socket.getInputStream(), UTF_8));
            assertThat(until(": listening")).contains("Content-Type: text/event-stream;charset=utf-8");
        }

        /** All lines up to one. */
        List<String> until(String last) throws IOException {
            List<String> heard = new ArrayList<>();
            while (!heard.contains(last)) {
                String line = lines.readLine();
                if (line == null) {
                    throw new AssertionError("the line was cut after " + heard);
                }
                heard.add(line);
            }
            return heard;
        }

        @Override
        public void close() throws IOException {
            socket.close();
        }
    }

    @BeforeEach
    void open() throws Exception {
        desk = Desk.in(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void everybody_hears_what_is_saved_and_ticked() throws Exception {
        String id = desk.bring("job: x\n");
        try (Ear one = new Ear(desk);
                Ear other = new Ear(desk)) {
            desk.put("/api/jobs/" + id, "{\"base\":1,\"job\":{\"job\":\"y\"}}");
            desk.put("/api/jobs/" + id + "/ticks", "{\"tick\":\"mark 3\",\"done\":true}");
            String ticked = "data: {\"id\":\"" + id + "\",\"tick\":\"mark 3\",\"done\":true}";
            for (Ear ear : List.of(one, other)) {
                assertThat(ear.until(ticked))
                        .containsSubsequence(
                                "event: saved",
                                "data: {\"id\":\"" + id + "\",\"version\":2,\"device\":\"this computer\"}",
                                "event: listed",
                                "data: {}",
                                "event: ticked",
                                ticked);
            }
        }
    }

    @Test
    void saving_the_same_again_is_no_news() throws Exception {
        String id = desk.bring("job: x\n");
        try (Ear ear = new Ear(desk)) {
            desk.put("/api/jobs/" + id, "{\"base\":1,\"job\":{\"job\":\"x\"}}");
            desk.post("/api/jobs/" + id + "/archive", "{\"archived\":true}");
            assertThat(ear.until("event: listed")).doesNotContain("event: saved");
        }
    }
}
