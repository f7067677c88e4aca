package pitchboard.web.live;

import io.javalin.http.sse.SseClient;

/** A line of server-sent events. */
record EventLine(SseClient client) implements Line {
    @Override
    public void say(String event, String data) {
        client.sendEvent(event, data);
    }

    @Override
    public void sign() {
        client.sendComment("listening");
    }

    @Override
    public boolean isCut() {
        return client.terminated();
    }

    @Override
    public void cut() {
        client.close();
    }
}
