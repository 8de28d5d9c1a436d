package wayside.sizing.brief;

/** What a pair of bank and array is chosen by, among those that are sure enough. */
public enum Objective {
    PRICE("price"),
    MASS("mass"),
    VOLUME("volume");

    private final String code;

    Objective(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
