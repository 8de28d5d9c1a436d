package wayside.server.operation.shared;

import wayside.server.binding.Coded;

/** Storage chemistries. */
public enum ChemistryCode implements Coded {
    LFP("lfp"),
    AGM("agm"),
    GEL("gel"),
    FLOODED("flooded"),
    NMC("nmc");

    private final String code;

    ChemistryCode(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
