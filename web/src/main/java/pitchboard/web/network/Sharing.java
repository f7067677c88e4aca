package pitchboard.web.network;

import java.util.function.IntSupplier;

/** How far the server can be reached, and what that means. */
public final class Sharing {
    private static final String ALONE =
            "Only this computer reaches Pitchboard. To let phones and computers on your network in, stop it and start it"
                    + " with: ./pitchboard open --share";
    private static final String SHARED = "Paired devices on this network read and change every job. What they send is"
            + " not encrypted: whoever is on this network can listen, and could use what they hear to do the same. Share"
            + " on a network of your own, never on one that is open to strangers.";

    private final boolean shared;
    private final IntSupplier port;

    /**
     * How far.
     *
     * @param port known when the server listens
     */
    public Sharing(boolean shared, IntSupplier port) {
        this.shared = shared;
        this.port = port;
    }

    public boolean isShared() {
        return shared;
    }

    /** What is exposed, in plain words. */
    public String statement() {
        return shared ? SHARED : ALONE;
    }

    /** Where to open it: on the network when it is shared and there is one. */
    public String address() {
        String here = "http://127.0.0.1:" + port.getAsInt() + "/";
        return shared ? OwnAddresses.urls(port.getAsInt()).findFirst().orElse(here) : here;
    }
}
