package wayside.sizing.trace;

/** What stands behind a value. */
public enum Basis {
    STANDARD("standard"),
    HANDBOOK("handbook"),
    PAPER("paper"),
    DATASET("dataset"),
    /** Physics or arithmetic that needs no citation. */
    DEFINITION("definition"),
    /** What the trade does, with no published source. */
    COMMON_PRACTICE("common-practice"),
    PRICE_BOOK("price-book"),
    GIVEN("given");

    private final String code;

    Basis(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
