package pitchboard.web.guarding;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Locale;

/**
 * Whether a request asks for this server by a name that is really its own. A page from elsewhere can have its own name
 * point here; then the browser sends that name, and is refused.
 */
public final class HostCheck {
    private HostCheck() {}

    /**
     * Whether the name is one of the loopback's, or the very address on which the request came in.
     *
     * @param host as the request says: name and port, the port left out when it is 80
     * @param localAddress where the request came in
     * @param localPort where the request came in
     */
    public static boolean isOwn(String host, String localAddress, int localPort) {
        String wanted = host.toLowerCase(Locale.ROOT);
        if (localPort == 80 && !wanted.matches(".*:[0-9]+")) {
            wanted += ":80";
        }
        String port = ":" + localPort;
        return wanted.equals("127.0.0.1" + port)
                || wanted.equals("localhost" + port)
                || wanted.equals("[::1]" + port)
                || wanted.equals(literal(localAddress) + port);
    }

    /** An address as it stands in a URL. */
    public static String literal(String address) {
        String plain = address.replaceAll("[\\[\\]]|%.*$", "");
        return plain.indexOf(':') >= 0 ? "[" + plain + "]" : plain;
    }

    /** Whether the other end is on this very machine. */
    public static boolean isLoopback(String address) {
        try {
            // An address in digits: nothing is looked up.
            return InetAddress.getByName(address.replaceAll("[\\[\\]]|%.*$", ""))
                    .isLoopbackAddress();
        } catch (UnknownHostException strange) {
            return false;
        }
    }
}
