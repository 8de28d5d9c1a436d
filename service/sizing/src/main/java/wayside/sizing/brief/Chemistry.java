package wayside.sizing.brief;

/** Storage chemistries that a brief may ask for. */
public enum Chemistry {
    LFP("lfp", false),
    AGM("agm", true),
    GEL("gel", true),
    FLOODED("flooded", true),
    NMC("nmc", false);

    private final String code;
    private final boolean leadAcid;

    Chemistry(String code, boolean leadAcid) {
        this.code = code;
        this.leadAcid = leadAcid;
    }

    public String code() {
        return code;
    }

    public boolean isLeadAcid() {
        return leadAcid;
    }
}
