package wayside.server.intake;

import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.eclipse.jetty.server.Request;

/**
 * Whose request it is: the address that it comes from. Where that is a proxy that the settings trust, the last address in
 * X-Forwarded-For that is no such proxy; from anybody else that field is not looked at.
 */
final class ClientNames {
    private static final int NETWORK_BYTES = 8;

    private final List<String> proxies;

    ClientNames(List<String> proxies) {
        this.proxies = List.copyOf(proxies);
    }

    String of(Request request) {
        SocketAddress remote = request.getConnectionMetaData().getRemoteSocketAddress();
        if (!(remote instanceof InetSocketAddress address) || address.getAddress() == null) {
            return "unknown";
        }
        String name = name(address.getAddress());
        if (!proxies.contains(address.getAddress().getHostAddress())) {
            return name;
        }
        List<String> path = request.getHeaders().getValuesList("X-Forwarded-For").stream()
                .flatMap(field -> Arrays.stream(field.split(",", -1)))
                .map(String::strip)
                .filter(hop -> !hop.isEmpty() && !proxies.contains(hop))
                .toList();
        return path.isEmpty() ? name : "for " + shortened(path.get(path.size() - 1));
    }

    /** Of IPv6 one customer has at least a whole network of 64 bits. */
    private static String name(InetAddress address) {
        byte[] bytes = address.getAddress();
        return HexFormat.of().formatHex(bytes, 0, Math.min(bytes.length, NETWORK_BYTES));
    }

    private static String shortened(String hop) {
        return hop.length() > 45 ? hop.substring(0, 45) : hop;
    }
}
