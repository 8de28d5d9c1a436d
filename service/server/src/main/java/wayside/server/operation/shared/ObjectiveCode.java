package wayside.server.operation.shared;

import wayside.server.binding.Coded;

/** What a pair of battery and array is chosen by. */
public enum ObjectiveCode implements Coded {
    PRICE("price"),
    MASS("mass"),
    VOLUME("volume");

    private final String code;

    ObjectiveCode(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
