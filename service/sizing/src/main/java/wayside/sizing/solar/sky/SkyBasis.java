package wayside.sizing.solar.sky;

/** Where a month's sunshine comes from. */
public enum SkyBasis {
    /** The request says it. */
    GIVEN("given"),
    /** The world climatology, from the land cells round the place. */
    WORLD("world-climatology"),
    /** The mean of the latitude: no land cell is near. */
    LATITUDE("latitude-band");

    private final String code;

    SkyBasis(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
