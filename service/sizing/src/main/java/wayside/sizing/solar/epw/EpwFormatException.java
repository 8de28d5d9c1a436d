package wayside.sizing.solar.epw;

/** A file that can't be read as a typical year, and where. */
public final class EpwFormatException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int line;

    EpwFormatException(int line, String message) {
        super("Line " + line + ": " + message);
        this.line = line;
    }

    /** Number of the line, from 1. */
    public int line() {
        return line;
    }
}
