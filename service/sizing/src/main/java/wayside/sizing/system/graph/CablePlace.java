package wayside.sizing.system.graph;

/** Where a cable lies. */
public enum CablePlace {
    LIVING_SPACE("living-space"),
    ENGINE_SPACE("engine-space"),
    ROOF("roof");

    private final String code;

    CablePlace(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
