package wayside.sizing.system.graph;

/** A part of a system, or several alike. */
public enum NodeKind {
    /** One of several side by side that each have a fuse. */
    BATTERY("battery"),
    BANK("bank"),
    BANK_HEATER("bank-heater"),
    STARTER_BATTERY("starter-battery"),
    BUSBAR("busbar"),
    INVERTER("inverter"),
    STRING("string"),
    ARRAY("array"),
    CHARGE_CONTROLLER("charge-controller"),
    ALTERNATOR_CHARGER("alternator-charger"),
    SHORE_CHARGER("shore-charger"),
    CONVERTER("converter"),
    DC_LOADS("dc-loads"),
    HOOKUP("hookup"),
    AC_PANEL("ac-panel"),
    AC_LOADS("ac-loads");

    private final String code;

    NodeKind(String code) {
        this.code = code;
    }

    /** Its id in an answer: no system has two nodes of a kind. */
    public String code() {
        return code;
    }
}
