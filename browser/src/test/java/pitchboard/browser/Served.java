package pitchboard.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder served on loopback: a browser takes no modules from files. */
final class Served implements AutoCloseable {
    private final Path folder;
    private final HttpServer server;

    private Served(Path folder, HttpServer server) {
        this.folder = folder;
        this.server = server;
    }

    static Served folder(Path folder) throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        Served served = new Served(folder, server);
        server.createContext("/", served::answer);
        server.start();
        return served;
    }

    /** Of an empty page. */
    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/";
    }

    private void answer(HttpExchange asked) throws IOException {
        try (asked) {
            Path file =
                    folder.resolve(asked.getRequestURI().getPath().substring(1)).normalize();
            boolean found = file.startsWith(folder) && Files.isRegularFile(file);
            byte[] bytes = found
                    ? Files.readAllBytes(file)
                    : "<!doctype html><title>empty</title>".getBytes(StandardCharsets.UTF_8);
            asked.getResponseHeaders().set("Content-Type", type(file, found));
            asked.sendResponseHeaders(200, bytes.length);
            asked.getResponseBody().write(bytes);
        }
    }

    private static String type(Path file, boolean found) {
        if (!found) {
            return "text/html; charset=utf-8";
        }
        return file.toString().endsWith(".wasm") ? "application/wasm" : "text/javascript; charset=utf-8";
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
