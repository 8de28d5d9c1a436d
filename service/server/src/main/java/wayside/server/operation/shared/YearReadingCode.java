package wayside.server.operation.shared;

import wayside.server.binding.Coded;

/** What is read from a typical year. */
public enum YearReadingCode implements Coded {
    HOURS("hours"),
    MEANS("means");

    private final String code;

    YearReadingCode(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
