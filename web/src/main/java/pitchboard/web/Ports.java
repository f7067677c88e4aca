package pitchboard.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;

/** Where the server can be reached. */
final class Ports {
    static final int LAST = 65_535;

    private static final int TRIES = 50;

    private Ports() {}

    /** This port, or the next that nobody listens on; 0, any, when there is none near. */
    static int firstFree(int wanted, boolean shared) {
        for (int port = wanted; port < wanted + TRIES && port <= LAST; port++) {
            if (isFree(shared ? new InetSocketAddress(port) : loopback(port))) {
                return port;
            }
        }
        return 0;
    }

    private static InetSocketAddress loopback(int port) {
        return new InetSocketAddress(InetAddress.getLoopbackAddress(), port);
    }

    private static boolean isFree(InetSocketAddress address) {
        try (ServerSocket socket = new ServerSocket()) {
            socket.bind(address);
            return true;
        } catch (IOException taken) {
            return false;
        }
    }
}
