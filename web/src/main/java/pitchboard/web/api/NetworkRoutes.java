package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import pitchboard.documents.json.Json;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.Device;
import pitchboard.web.guarding.Door;
import pitchboard.web.live.Live;
import pitchboard.web.network.PairedDevices;
import pitchboard.web.network.PairingCode;
import pitchboard.web.network.QrPicture;
import pitchboard.web.network.Sharing;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** How far the server reaches, and the devices that are let in. */
public final class NetworkRoutes {
    private static final int FORBIDDEN = 403;
    private static final int CONFLICT = 409;
    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_CODE = 40;
    /** A device is paired anew after a year. */
    private static final int COOKIE_SECONDS = 365 * 24 * 60 * 60;

    private final Sharing sharing;
    private final PairingCode code;
    private final PairedDevices devices;
    private final Live live;

    public NetworkRoutes(Sharing sharing, PairingCode code, PairedDevices devices, Live live) {
        this.sharing = sharing;
        this.code = code;
        this.devices = devices;
        this.live = live;
    }

    public void add(RoutesConfig routes) {
        routes.get("/api/network", this::network);
        routes.post("/api/network/code", this::code);
        routes.post("/api/pair", this::pair);
        routes.get("/api/devices", this::list);
        routes.delete("/api/devices/{device}", this::revoke);
    }

    private void network(Context context) {
        Reply.send(
                context,
                Json.object()
                        .with("shared", Json.truth(sharing.isShared()))
                        .says("address", sharing.address())
                        .says("statement", sharing.statement()));
    }

    private void code(Context context) throws Refusal {
        Door.onlyHere(context);
        if (!sharing.isShared()) {
            throw new Refusal(CONFLICT, sharing.statement());
        }
        PairingCode.Shown shown = code.renew();
        // Behind the hash: a browser does not send that part, so the code stands in no log.
        String address = sharing.address() + "#pair/" + shown.text().replace("-", "");
        Reply.send(
                context,
                Json.object()
                        .says("code", shown.text())
                        .says("svg", QrPicture.svg(address))
                        .says("address", address)
                        .says("until", shown.until().toString()));
    }

    private void pair(Context context) throws Refusal, FileTrouble, IOException {
        Ask ask = Ask.of(context);
        String typed = ask.text("code", LONGEST_CODE);
        String name = ask.text("name", LONGEST_NAME).strip();
        if (name.isEmpty()) {
            throw Ask.wrong("name", "a name for this device");
        }
        if (!code.redeem(typed)) {
            throw new Refusal(
                    FORBIDDEN, "this code lets nobody in: it is wrong, used up or too old. Ask for a new one");
        }
        context.header(
                "Set-Cookie",
                Door.COOKIE + "=" + devices.letIn(name) + "; Path=/; Max-Age=" + COOKIE_SECONDS
                        + "; HttpOnly; SameSite=Strict");
        Reply.send(context, Json.object().says("name", name));
    }

    private void list(Context context) throws Refusal, FileTrouble {
        Door.onlyHere(context);
        Reply.send(context, Json.object().with("devices", Json.list(devices.list(), NetworkRoutes::device)));
    }

    private static Json device(Device device) {
        return Json.object()
                .says("id", device.id())
                .says("name", device.name())
                .says("paired", device.paired().toString())
                .says("seen", device.seen().toString());
    }

    private void revoke(Context context) throws Refusal, FileTrouble {
        Door.onlyHere(context);
        String device = context.pathParam("device");
        if (!devices.revoke(device)) {
            throw Refusal.missing("device");
        }
        live.hangUp(device);
        Reply.send(context, Json.object().says("id", device));
    }
}
