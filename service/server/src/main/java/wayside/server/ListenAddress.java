package wayside.server;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where the service is to listen.
 *
 * @param host name or address; empty for every address of the machine
 * @param port 0 for any that is free
 * @param setting which says the port
 */
record ListenAddress(String host, int port, Setting setting) {
    private static final int HIGHEST_PORT = 65_535;
    /** Below it many systems let only root listen. */
    private static final int FIRST_PORT_FOR_ALL = 1024;

    private static final int USUAL_PORT = 8080;

    ListenAddress(String host, int port) {
        this(host, port, Setting.PORT);
    }

    /** Why nothing can listen here, in one line that says what to do; empty when something can. */
    Optional<String> fault() {
        if (at(0).isUnresolved()) {
            return Optional.of(hostFault("a name that leads to no address"));
        }
        if (!isFree(0)) {
            return Optional.of(hostFault("which is not an address of this machine"));
        }
        return isFree(port) ? Optional.empty() : Optional.of(portFault());
    }

    /** The address to open in a browser on this machine, ending in a slash. */
    String url(int boundPort) {
        InetAddress address = at(0).getAddress();
        String name = address == null || address.isAnyLocalAddress() ? "localhost" : host;
        return "http://" + (name.contains(":") ? "[" + name + "]" : name) + ":" + boundPort + "/";
    }

    private String hostFault(String what) {
        return "WAYSIDE_HOST is '" + host + "', " + what + "; leave it out to listen on every address of this machine";
    }

    private String portFault() {
        boolean forAll = port >= FIRST_PORT_FOR_ALL;
        int free = IntStream.rangeClosed(forAll ? port + 1 : USUAL_PORT, HIGHEST_PORT)
                .filter(this::isFree)
                .findFirst()
                .orElse(0);
        return "Port " + port + (forAll ? " is taken" : " is taken or only for root") + "; try " + setting.variable()
                + "=" + free + " deploy/run";
    }

    private boolean isFree(int wanted) {
        try (ServerSocket socket = new ServerSocket()) {
            socket.bind(at(wanted));
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private InetSocketAddress at(int wanted) {
        return host.isEmpty() ? new InetSocketAddress(wanted) : new InetSocketAddress(host, wanted);
    }
}
