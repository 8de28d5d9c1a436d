package wayside.sizing.wiring;

/** The demand that decided the size of a conductor. */
public enum GovernedBy {
    /** A thinner one would not carry the design current. */
    AMPACITY("ampacity"),
    /** A thinner one would carry the current but not be protected by the smallest fuse that carries it. */
    FUSE("fuse"),
    /** A thinner one would lose too much voltage. */
    VOLTAGE_DROP("voltage-drop"),
    /** A thinner one would not outlast what its fuse lets through in a short circuit. */
    SHORT_CIRCUIT("short-circuit"),
    /** Nothing but the thinnest size that the rules allow. */
    MINIMUM_SIZE("minimum-size");

    private final String code;

    GovernedBy(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }
}
