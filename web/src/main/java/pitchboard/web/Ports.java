package pitchboard.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;

/** Where the server can be reached. */
final class Ports {
    private static final int TRIES = 50;

    private Ports() {}

    /** This port, or the next that nobody listens on; 0, any, when there is none near. */
    static int firstFree(int wanted) {
        for (int port = wanted; port < wanted + TRIES; port++) {
            if (isFree(port)) {
                return port;
            }
        }
        return 0;
    }

    private static boolean isFree(int port) {
        try (ServerSocket socket = new ServerSocket()) {
            socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
            return true;
        } catch (IOException taken) {
            return false;
        }
    }
}
