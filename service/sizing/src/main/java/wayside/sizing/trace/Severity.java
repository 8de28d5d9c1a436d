package wayside.sizing.trace;

/** How badly things can go. */
public enum Severity {
    /** Someone can be hurt or a fire can start. */
    DANGER("danger"),
    /** Equipment can be damaged or the system can fail. */
    WARNING("warning"),
    /** Worth knowing. */
    NOTE("note");

    private final String code;

    Severity(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
