package wayside.server.operation.shared;

import wayside.server.binding.Coded;

/** Whose day-to-day spread the drawn days have. */
public enum DaySpreadCode implements Coded {
    PLACE("place"),
    BENDT("bendt");

    private final String code;

    DaySpreadCode(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
