package wayside.sizing.trace;

/** The closed list of units that a traced value may carry. The symbol is what the API prints. */
public enum Unit {
    WATT("W"),
    WATT_HOUR("Wh"),
    AMPERE_HOUR("Ah"),
    VOLT("V"),
    AMPERE("A"),
    OHM("Ohm"),
    /** Heat of a short circuit by the resistance that it flows through. */
    AMPERE_SQUARED_SECOND("A2s"),
    JOULE_PER_KELVIN_CUBIC_MILLIMETRE("J/(K mm3)"),
    OHM_PER_KM("Ohm/km"),
    /** Only as tables in feet print it. */
    OHM_PER_THOUSAND_FEET("Ohm/kft"),
    SQUARE_MILLIMETRE("mm2"),
    CIRCULAR_MIL("cmil"),
    METRE("m"),
    MILLIMETRE("mm"),
    SQUARE_METRE("m2"),
    SQUARE_CENTIMETRE("cm2"),
    KILOGRAM("kg"),
    LITRE("L"),
    CUBIC_METRE_PER_HOUR("m3/h"),
    CELSIUS("C"),
    KELVIN("K"),
    PER_KELVIN("1/K"),
    /** Heat that is lost for each degree of difference. */
    WATT_PER_KELVIN("W/K"),
    HOUR("h"),
    /** A current as a part of the rated capacity: A per Ah. */
    PER_HOUR("1/h"),
    DAY("d"),
    MINUTE("min"),
    SECOND("s"),
    DEGREE("deg"),
    KILOWATT_HOUR_PER_SQUARE_METRE("kWh/m2"),
    WATT_PER_SQUARE_METRE("W/m2"),
    MEGAJOULE_PER_SQUARE_METRE("MJ/m2"),
    METRE_PER_SECOND("m/s"),
    KELVIN_PER_WATT_PER_SQUARE_METRE("K m2/W"),
    /** Energy from each watt of rated power. */
    WATT_HOUR_PER_WATT("Wh/W"),
    WATT_HOUR_PER_KILOGRAM("Wh/kg"),
    WATT_HOUR_PER_LITRE("Wh/L"),
    WATT_PER_SQUARE_METRE_PANEL("W/m2 of panel"),
    /** A part of a whole, 0 to 1. */
    SHARE("share"),
    /** Only where the trade states a limit in percent. */
    PERCENT("%"),
    /** A plain number: a count, a ratio, an exponent. */
    COUNT("1");

    /** Hours of a day. */
    public static final int HOURS_PER_DAY = 24;

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }
}
