package wayside.sizing.trace;

import java.util.List;

/** What can be cautioned of. */
public enum CautionCode implements MessageCode {
    LABEL_AROUND_THE_CLOCK(Slot.text("load"), Slot.number("hours", Unit.HOUR)),
    COOKING_WATTS(Slot.number("power", Unit.WATT), Slot.text("load"), Slot.number("input", Unit.WATT)),
    UNITS_MIXED_UP(Slot.text("load")),
    LARGE_LOAD_AT_DC(Slot.text("load"), Slot.number("current", Unit.AMPERE), Slot.number("voltage", Unit.VOLT)),
    START_SURGE_MISSING(Slot.text("load")),
    MUST_NOT_FAIL(Slot.text("load")),
    MUST_NOT_BE_SHED(Slot.text("load")),
    HUMIDIFIER(Slot.text("load")),
    INVERTER_TOO_SMALL(Slot.text("load"), Slot.number("power", Unit.WATT), Slot.number("continuous", Unit.WATT)),
    INVERTER_SURGE_TOO_SMALL(Slot.text("load"), Slot.number("start", Unit.WATT), Slot.number("surge", Unit.WATT)),
    NOT_ALL_AT_ONCE(
            Slot.number("running", Unit.WATT),
            Slot.number("starting", Unit.WATT),
            Slot.number("continuous", Unit.WATT),
            Slot.number("surge", Unit.WATT)),
    INVERTER_IDLE(Slot.number("idle", Unit.WATT_HOUR)),
    /** Of a lithium battery; with how cold it gets, and with the hours that charge is on offer meanwhile, where known. */
    COLD_CHARGING(
            Slot.number("coldest", Unit.CELSIUS).orNot(),
            Slot.number("hours", Unit.HOUR).orNot()),
    NMC_FIRE,
    LEAD_ACID_VENTILATION(Slot.number("opening", Unit.SQUARE_CENTIMETRE).orNot()),
    LEAD_ACID_FROST,
    PARTIAL_RECHARGE,
    MAINS,
    ALTERNATOR_HEAT,
    ALTERNATOR_RATING,
    CONSIDER_24_V(Slot.number("current", Unit.AMPERE)),
    GROWTH,
    ARRAY_LARGER_THAN_ROOF(Slot.number("area", Unit.SQUARE_METRE), Slot.number("roof", Unit.SQUARE_METRE)),
    ARRAY_LIVE,
    STRING_OVER_VOLTAGE(Slot.number("coldVoltage", Unit.VOLT), Slot.number("controllerLimit", Unit.VOLT)),
    STRING_UNDER_VOLTAGE(Slot.number("hotVoltage", Unit.VOLT), Slot.number("chargingVoltage", Unit.VOLT)),
    /** A sky that was given and that lets more light through than any month's. */
    IMPLAUSIBLE_SKY(Slot.numbers("months", Unit.COUNT), Slot.number("clearness", Unit.SHARE)),
    /** Irradiation that was given where the sun does not rise. */
    IRRADIATION_WITHOUT_SUN(Slot.numbers("months", Unit.COUNT)),
    /** Air of a place that no land cell is near, taken from the sea or the ice round about. */
    TEMPERATURE_OFF_LAND(Slot.numbers("months", Unit.COUNT), Slot.number("range", Unit.KELVIN)),
    NO_SUN,
    TILT(Slot.number("month", Unit.COUNT), Slot.number("loss", Unit.SHARE), Slot.number("bestTilt", Unit.DEGREE)),
    SNOW,
    SHADE,
    NOT_A_FORECAST,
    FUSE_AT_SOURCE(Slot.number("distance", Unit.MILLIMETRE), Slot.number("sheathedDistance", Unit.MILLIMETRE)),
    LOCAL_CODE,
    AREA_NOT_DIAMETER,
    INTERRUPT_RATING,
    FUSE_PER_BATTERY(Slot.number("limit", Unit.AMPERE_HOUR)),
    DIRECT_CURRENT_ARC(Slot.number("limit", Unit.VOLT)),
    CONFIRM_FAULT_CURRENT(
            Slot.text("circuit"), Slot.number("shortCircuit", Unit.AMPERE), Slot.number("breaking", Unit.AMPERE)),
    ABOVE_60_V(Slot.text("circuit"), Slot.number("voltage", Unit.VOLT)),
    INVERTER_BEYOND_BANK(Slot.number("continuous", Unit.WATT), Slot.number("usable", Unit.WATT)),
    LIMIT_THE_CONTROLLERS(
            Slot.number("setting", Unit.AMPERE),
            Slot.number("asked", Unit.AMPERE),
            Slot.number("allowed", Unit.AMPERE)),
    CHARGED_TOO_GENTLY(Slot.number("asked", Unit.AMPERE), Slot.number("least", Unit.AMPERE)),
    STRING_HARDLY_CHARGES(Slot.number("asked", Unit.VOLT), Slot.number("allowed", Unit.VOLT)),
    STRING_MAY_NOT_START(Slot.number("asked", Unit.VOLT), Slot.number("allowed", Unit.VOLT)),
    THICKER_THAN_ITS_TERMINAL(
            Slot.text("circuit"),
            Slot.number("area", Unit.SQUARE_MILLIMETRE),
            Slot.number("terminal", Unit.SQUARE_MILLIMETRE)),
    /** AC loads on a hookup. */
    HOOKUP_OVERLOADED(Slot.number("asked", Unit.WATT), Slot.number("allowed", Unit.WATT)),
    NOTHING_CHARGES_IT(Slot.number("stay", Unit.COUNT)),
    /** The same where it is hot, or where the bank stands in the cabin already. */
    NOTHING_CHARGES_IT_THERE(
            Slot.number("stay", Unit.COUNT),
            Slot.number("power", Unit.WATT).orNot(),
            Slot.number("energy", Unit.WATT_HOUR).orNot()),
    FUSE_MAY_NOT_OPEN(
            Slot.text("circuit"), Slot.number("shortCircuit", Unit.AMPERE), Slot.number("needed", Unit.AMPERE)),
    PARALLEL_CONDUCTORS(Slot.text("circuit")),
    ENGINE_SPACE(Slot.text("circuit"), Slot.number("ambient", Unit.CELSIUS)),
    WARM_COPPER(
            Slot.text("circuit"),
            Slot.text("size"),
            Slot.number("copper", Unit.CELSIUS),
            Slot.number("drop", Unit.PERCENT),
            Slot.number("limit", Unit.PERCENT));

    @SuppressWarnings("ImmutableEnumChecker") // a list that List.of made
    private final List<Slot> slots;

    CautionCode(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public String kind() {
        return "caution";
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
