package pitchboard.web.network;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Under which addresses the devices of a network find this machine. */
public final class OwnAddresses {
    private OwnAddresses() {}

    /** In digits, those of a private network (RFC 1918) first; none when the machine is in no network. */
    public static List<String> find() {
        try {
            return NetworkInterface.networkInterfaces()
                    .filter(OwnAddresses::isUp)
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(OwnAddresses::isForOthers)
                    .sorted(Comparator.comparing(address -> !address.isSiteLocalAddress()))
                    .map(InetAddress::getHostAddress)
                    .toList();
        } catch (SocketException none) {
            return List.of();
        }
    }

    private static boolean isUp(NetworkInterface network) {
        try {
            return network.isUp() && !network.isLoopback() && !network.isPointToPoint();
        } catch (SocketException gone) {
            return false;
        }
    }

    /** The newer kind of address is too long to be typed on a phone, and every such network has the older kind too. */
    private static boolean isForOthers(InetAddress address) {
        return address instanceof Inet4Address && !address.isLoopbackAddress() && !address.isLinkLocalAddress();
    }

    /** The same as a stream of addresses to open in a browser. */
    public static Stream<String> urls(int port) {
        return find().stream().map(address -> "http://" + address + ":" + port + "/");
    }
}
