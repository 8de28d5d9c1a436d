package wayside.sizing.trace;

import java.util.List;

/** What can be short. {@code higherVoltage} is a bus that would halve a circuit's current. */
public enum ShortfallCode implements MessageCode {
    BANK_TOO_SMALL,
    /** No equal batteries side by side hold so much. */
    BANK_NOT_MADE,
    LOCKER_TOO_SMALL,
    ROOF_TOO_SMALL,
    /** Batteries, modules, controllers, chargers, inverter and cables together. */
    PAYLOAD_TOO_SMALL,
    /** No string of any module suits a charge controller. */
    NO_CONTROLLER,
    INVERTER_NOT_MADE,
    CONVERTER_NOT_MADE,
    ARRAY_TOO_SMALL(Slot.number("stay", Unit.COUNT)),
    NO_SUN(Slot.number("stay", Unit.COUNT)),
    INVERTER_TOO_SMALL(Slot.text("load")),
    INVERTER_SURGE_TOO_SMALL(Slot.text("load")),
    CHANCE_TOO_HIGH,
    VITAL_GOES_SHORT,
    COMFORT_TOO_RARE(Slot.number("served", Unit.SHARE), Slot.number("wanted", Unit.SHARE)),
    DAY_NOT_BALANCED(Slot.number("drain", Unit.WATT_HOUR)),
    NO_FUSE_RATING(
            Slot.text("circuit"),
            Slot.number("needed", Unit.AMPERE),
            Slot.number("largest", Unit.AMPERE),
            Slot.number("higherVoltage", Unit.VOLT).orNot()),
    NO_CONDUCTOR(
            Slot.text("circuit"),
            Slot.number("fuse", Unit.AMPERE),
            Slot.number("count", Unit.COUNT),
            Slot.text("size"),
            Slot.number("limit", Unit.AMPERE),
            Slot.number("higherVoltage", Unit.VOLT).orNot()),
    TOO_LONG(
            Slot.text("circuit"),
            Slot.number("drop", Unit.PERCENT),
            Slot.number("roundTrip", Unit.METRE),
            Slot.number("count", Unit.COUNT),
            Slot.text("size"),
            Slot.number("limit", Unit.PERCENT),
            Slot.number("higherVoltage", Unit.VOLT).orNot()),
    TOO_HOT(Slot.text("circuit"), Slot.number("ambient", Unit.CELSIUS), Slot.number("insulation", Unit.CELSIUS)),
    ALTERNATOR_OVERLOADED(
            Slot.number("asked", Unit.AMPERE), Slot.number("usable", Unit.AMPERE), Slot.number("charger", Unit.AMPERE)),
    DRAWN_TOO_HARD(
            Slot.number("asked", Unit.AMPERE),
            Slot.number("allowed", Unit.AMPERE),
            Slot.number("capacity", Unit.AMPERE_HOUR).orNot(),
            Slot.number("count", Unit.COUNT).orNot()),
    STARTED_TOO_HARD(
            Slot.number("asked", Unit.AMPERE),
            Slot.number("allowed", Unit.AMPERE),
            Slot.number("seconds", Unit.SECOND),
            Slot.number("capacity", Unit.AMPERE_HOUR).orNot(),
            Slot.number("count", Unit.COUNT).orNot()),
    CHARGED_TOO_HARD(Slot.number("asked", Unit.AMPERE), Slot.number("allowed", Unit.AMPERE)),
    NO_AC_BREAKER(Slot.text("circuit"), Slot.number("current", Unit.AMPERE)),
    NO_FUSE_TYPE(Slot.text("circuit"), Slot.number("voltage", Unit.VOLT), Slot.number("shortCircuit", Unit.AMPERE)),
    /** Of a recharge, or of a whole stay of a trip. */
    TOO_COLD_TO_CHARGE(
            Slot.number("stay", Unit.COUNT).orNot(),
            Slot.number("power", Unit.WATT).orNot(),
            Slot.number("energy", Unit.WATT_HOUR).orNot()),
    /** The same of a bank that stands in the cabin already. */
    TOO_COLD_IN_THE_CABIN(
            Slot.number("stay", Unit.COUNT).orNot(),
            Slot.number("power", Unit.WATT).orNot(),
            Slot.number("energy", Unit.WATT_HOUR).orNot()),
    TOO_HOT_TO_CHARGE(Slot.number("stay", Unit.COUNT).orNot()),
    NO_POWER;

    @SuppressWarnings("ImmutableEnumChecker") // a list that List.of made
    private final List<Slot> slots;

    ShortfallCode(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public String kind() {
        return "shortfall";
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
