package wayside.server.operation.shared;

import wayside.server.binding.Coded;

/** How much a load matters when the battery runs low. */
public enum TierCode implements Coded {
    VITAL("vital"),
    ESSENTIAL("essential"),
    COMFORT("comfort");

    private final String code;

    TierCode(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
