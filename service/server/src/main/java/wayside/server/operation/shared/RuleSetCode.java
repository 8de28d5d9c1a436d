package wayside.server.operation.shared;

import wayside.server.binding.Coded;

/** Rule sets for conductors. */
public enum RuleSetCode implements Coded {
    ABYC_E11("abyc-e11"),
    NEC("nec");

    private final String code;

    RuleSetCode(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
