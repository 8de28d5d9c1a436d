package wayside.sizing.brief;

/** What can fill a battery. */
public enum ChargingKind {
    SOLAR("solar"),
    ALTERNATOR("alternator"),
    SHORE("shore");

    private final String code;

    ChargingKind(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
