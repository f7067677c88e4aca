package pitchboard.web.guarding;

import java.util.Optional;

/** Whether a request comes from the page of this server and not from a page of somebody else in the same browser. */
public final class OriginCheck {
    private OriginCheck() {}

    /**
     * For a request that only reads.
     *
     * @param site the header Sec-Fetch-Site, which newer browsers send
     */
    public static boolean mayRead(Optional<String> site) {
        return site.isEmpty() || isOwnSite(site.get());
    }

    /**
     * For a request that changes something: it has to say where it comes from, as every browser does.
     *
     * @param origin the header Origin
     * @param host the header Host, which was found to be this server's own
     */
    public static boolean mayChange(Optional<String> origin, Optional<String> site, String host) {
        boolean says = origin.isPresent() || site.isPresent();
        boolean ownOrigin = origin.isEmpty() || origin.get().equalsIgnoreCase("http://" + host);
        return says && ownOrigin && mayRead(site);
    }

    private static boolean isOwnSite(String site) {
        return site.equals("same-origin") || site.equals("none");
    }
}
