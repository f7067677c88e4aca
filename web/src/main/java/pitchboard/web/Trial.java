package pitchboard.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;

/** Asks a server for what a page asks first, so that Java meets every class that a start needs. */
final class Trial {
    private static final List<String> FIRST = List.of("", "page/lib/lit-html.js", "api/jobs?search=", "api/network");

    private Trial() {}

    static void ask(Server server) throws IOException, InterruptedException {
        HttpClient client = HttpClient.newHttpClient();
        for (String path : FIRST) {
            URI address = URI.create(server.address() + path);
            client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.discarding());
        }
    }
}
