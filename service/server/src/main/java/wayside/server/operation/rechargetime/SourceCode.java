package wayside.server.operation.rechargetime;

import wayside.server.binding.Coded;

/** What can fill a battery. */
public enum SourceCode implements Coded {
    SOLAR("solar"),
    ALTERNATOR("alternator"),
    SHORE("shore");

    private final String code;

    SourceCode(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
