package pitchboard.web;

import io.javalin.config.JettyConfig;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import pitchboard.web.guarding.StrictHeaders;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** What is refused before it gets to a route, because it is no proper request: answered like any other refusal. */
final class Refusals {
    private Refusals() {}

    static void add(JettyConfig jetty) {
        jetty.modifyServer(server -> server.setErrorHandler(Refusals::answer));
        jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendXPoweredBy(false);
        });
    }

    private static boolean answer(Request request, Response response, Callback callback) {
        StrictHeaders.of("/api").forEach((name, value) -> response.getHeaders().put(name, value));
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, Reply.JSON);
        String body = new Refusal(response.getStatus(), "this is not a request that can be answered").text();
        Content.Sink.write(response, true, body, callback);
        return true;
    }
}
