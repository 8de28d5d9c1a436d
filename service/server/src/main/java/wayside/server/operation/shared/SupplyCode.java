package wayside.server.operation.shared;

import wayside.server.binding.Coded;

/** Where a load is plugged in. */
public enum SupplyCode implements Coded {
    DC("dc"),
    AC("ac");

    private final String code;

    SupplyCode(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
