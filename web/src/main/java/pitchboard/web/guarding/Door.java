package pitchboard.web.guarding;

import io.javalin.http.Context;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.Set;
import pitchboard.store.FileTrouble;
import pitchboard.web.wire.Refusal;

/** Looks at every request before anything is done for it. */
public final class Door {
    /** Where a paired device keeps its key. */
    public static final String COOKIE = "pitchboard-device";

    private static final int NOT_PAIRED = 401;
    private static final int FORBIDDEN = 403;
    private static final int TOO_MANY = 429;
    private static final Set<String> READING = Set.of("GET", "HEAD");

    private final Allowance here;
    private final Allowance network;
    private final Keys keys;

    /**
     * A door.
     *
     * @param here how much each browser on this machine may ask
     * @param network how much each device on the network may ask
     */
    public Door(Allowance here, Allowance network, Keys keys) {
        this.here = here;
        this.network = network;
        this.keys = keys;
    }

    /** Lets a request in, or refuses it. */
    public void check(Context context) throws Refusal, FileTrouble {
        StrictHeaders.of(context.path()).forEach(context::header);
        HttpServletRequest request = context.req();
        String host = Optional.ofNullable(context.header("Host")).orElse("");
        if (!HostCheck.isOwn(host, request.getLocalAddr(), request.getLocalPort())) {
            throw new Refusal(FORBIDDEN, "this server does not go by that name; open it by its address");
        }
        boolean local = HostCheck.isLoopback(request.getRemoteAddr());
        if (!(local ? here : network).take(request.getRemoteAddr())) {
            context.header("Retry-After", "1");
            throw new Refusal(TOO_MANY, "too many requests at once; try again in a second");
        }
        checkOrigin(context, host);
        identify(context, local);
    }

    private static void checkOrigin(Context context, String host) throws Refusal {
        Optional<String> site = Optional.ofNullable(context.header("Sec-Fetch-Site"));
        Optional<String> origin = Optional.ofNullable(context.header("Origin"));
        boolean reading = READING.contains(context.req().getMethod());
        boolean data = context.path().startsWith("/api/");
        if (reading ? data && !OriginCheck.mayRead(site) : !OriginCheck.mayChange(origin, site, host)) {
            throw new Refusal(
                    FORBIDDEN, "this comes from another page (or does not say from where, in the header Origin)");
        }
    }

    private void identify(Context context, boolean local) throws Refusal, FileTrouble {
        String key = Optional.ofNullable(context.cookie(COOKIE)).orElse("");
        Optional<Caller> caller = local ? Optional.of(Caller.HERE) : keys.find(key);
        if (caller.isPresent()) {
            caller.get().enter(context);
        } else if (context.path().startsWith("/api/") && !context.path().equals("/api/pair")) {
            throw new Refusal(NOT_PAIRED, "this device is not paired");
        }
        // The page itself holds nothing of anybody's, and a device needs it to be paired.
    }

    /** For what only the machine that the server runs on may do. */
    public static void onlyHere(Context context) throws Refusal {
        if (!Caller.of(context).isHere()) {
            throw new Refusal(FORBIDDEN, "this is done at the computer that Pitchboard runs on");
        }
    }
}
