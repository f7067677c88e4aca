package pitchboard.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pitchboard.documents.json.Json;
import pitchboard.store.FileTrouble;

/** A server in a folder of its own, and a browser's side of the talk with it. */
public final class Desk implements AutoCloseable {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final Server server;

    private Desk(Server server) {
        this.server = server;
    }

    public static Desk in(Path folder) throws FileTrouble {
        return of(Settings.of(0, folder));
    }

    public static Desk of(Settings settings) throws FileTrouble {
        return new Desk(Server.start(settings));
    }

    public int port() {
        return server.port();
    }

    public String address() {
        return server.address();
    }

    /** Without the slash at the end: as a page of this server says where it comes from. */
    public String origin() {
        return address().substring(0, address().length() - 1);
    }

    HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create(origin() + path));
    }

    Answer send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return new Answer(CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofByteArray()));
    }

    public Answer get(String path) throws IOException, InterruptedException {
        return send(to(path));
    }

    Answer send(String method, String path, String body) throws IOException, InterruptedException {
        return send(to(path).method(method, HttpRequest.BodyPublishers.ofString(body))
                .header("Content-Type", "application/json")
                .header("Origin", origin()));
    }

    public Answer post(String path, String body) throws IOException, InterruptedException {
        return send("POST", path, body);
    }

    public Answer put(String path, String body) throws IOException, InterruptedException {
        return send("PUT", path, body);
    }

    /** Takes in a job file and gives the new job's id. */
    public String bring(String file) throws IOException, InterruptedException {
        Answer answer = post("/api/jobs", Json.object().says("file", file).text());
        return answer.text("id");
    }

    /** The id of the job that a fresh database begins with. */
    public String example() throws IOException, InterruptedException {
        return get("/api/jobs?search=to%20the%20sail%20loft").text("jobs", "1", "id");
    }

    /** Sends these very lines, as no well-behaved client would, and gives all that comes back. */
    String raw(String... lines) throws IOException {
        List<String> all = new ArrayList<>(List.of(lines));
        all.add("Connection: close");
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port())) {
            String request = String.join("\r\n", all) + "\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Override
    public void close() {
        server.close();
    }
}
