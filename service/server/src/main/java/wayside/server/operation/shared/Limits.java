package wayside.server.operation.shared;

/**
 * The least and the widest figures that the contract takes, as annotations want them. Generous: they keep out slips, not
 * ideas; the least ones also keep out figures so small that a quotient of them has no end.
 */
public final class Limits {
    public static final String LEAST_POWER_W = "0.1";
    public static final String POWER_W = "1000000";
    public static final String LEAST_CURRENT_A = "0.01";
    public static final String CURRENT_A = "100000";
    public static final String LEAST_CAPACITY_AH = "0.1";
    public static final String LEAST_ENERGY_WH = "1";
    public static final String ENERGY_WH = "10000000";
    public static final String LEAST_VOLTAGE_V = "1";
    public static final String VOLTAGE_V = "1000";
    public static final String LEAST_LENGTH_M = "0.01";
    public static final String LENGTH_M = "1000";
    public static final String TEMPERATURE_LOW_C = "-60";
    public static final String TEMPERATURE_HIGH_C = "80";

    public static final int NAME_LENGTH = 80;
    public static final int LOADS = 200;
    public static final int CIRCUITS = 200;
    public static final int STAYS = 60;
    public static final int NIGHTS = 366;
    public static final int MONTHS = 12;
    public static final int QUANTITY = 1000;

    private Limits() {}
}
