package wayside.sizing.trace;

import java.util.List;

/** Why one self-contained unit would do or not, and what to weigh. */
public enum PowerUnitReason implements MessageCode {
    TOO_MUCH_ENERGY(Slot.number("needed", Unit.WATT_HOUR), Slot.number("limit", Unit.WATT_HOUR)),
    TOO_MUCH_DC(Slot.number("needed", Unit.WATT), Slot.number("current", Unit.AMPERE), Slot.number("limit", Unit.WATT)),
    TOO_MUCH_AC(Slot.number("needed", Unit.WATT), Slot.number("limit", Unit.WATT)),
    TOO_HARD_A_START(Slot.number("needed", Unit.WATT), Slot.number("limit", Unit.WATT)),
    TOO_MUCH_PANEL(Slot.number("needed", Unit.WATT), Slot.number("limit", Unit.WATT)),
    TOO_MUCH_WHILE_DRIVING(Slot.number("needed", Unit.WATT), Slot.number("limit", Unit.WATT)),
    ALL_WITHIN,
    UNIT_IS_ONE_PIECE,
    PARTS_GROW;

    @SuppressWarnings("ImmutableEnumChecker") // a list that List.of made
    private final List<Slot> slots;

    PowerUnitReason(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public String kind() {
        return "power-unit-reason";
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
