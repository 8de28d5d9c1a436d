package wayside.sizing.trace;

import java.util.List;

/** One change to the system or the way of travelling. */
public enum ChangeCode implements MessageCode {
    MORE_PANEL(Slot.number("power", Unit.WATT)),
    MORE_BATTERY(Slot.number("more", Unit.SHARE)),
    STRONGER_CHARGER(Slot.number("current", Unit.AMPERE)),
    TILT_PANEL(Slot.number("tilt", Unit.DEGREE)),
    /** In the cabin. */
    WARMER_BATTERY,
    /** With a heater, and what it takes on a cold day. */
    HEATED_BATTERY(Slot.number("power", Unit.WATT), Slot.number("energy", Unit.WATT_HOUR)),
    LESS_LOAD(Slot.number("less", Unit.SHARE), Slot.text("load")),
    INVERTER_OFF(Slot.number("hours", Unit.HOUR)),
    MORE_DRIVING(Slot.number("hours", Unit.HOUR)),
    MORE_HOOKUP(Slot.number("hours", Unit.HOUR)),
    PLUG_IN_EVERY(Slot.number("nights", Unit.COUNT), Slot.number("hours", Unit.HOUR)),
    SHORTER_TRIP(Slot.number("nights", Unit.COUNT));

    @SuppressWarnings("ImmutableEnumChecker") // a list that List.of made
    private final List<Slot> slots;

    ChangeCode(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public String kind() {
        return "change";
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
