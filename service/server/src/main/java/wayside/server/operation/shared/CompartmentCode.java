package wayside.server.operation.shared;

import wayside.server.binding.Coded;

/** Where in a vehicle a battery stands. */
public enum CompartmentCode implements Coded {
    CABIN("cabin"),
    UNDERFLOOR("underfloor"),
    OUTSIDE("outside");

    private final String code;

    CompartmentCode(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
