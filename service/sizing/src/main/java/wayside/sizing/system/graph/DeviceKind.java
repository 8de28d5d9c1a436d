package wayside.sizing.system.graph;

/** What sits in a cable besides its fuse. */
public enum DeviceKind {
    /** Opens every live conductor under load; rated for at least the fuse and the highest voltage of its cable. */
    ISOLATOR("isolator"),
    /** Of the battery monitor, in the return from everything but the bank's own sensing wire. */
    SHUNT("shunt"),
    INLET("inlet"),
    RESIDUAL_CURRENT_DEVICE("residual-current-device"),
    BREAKER("breaker");

    private final String code;

    DeviceKind(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
