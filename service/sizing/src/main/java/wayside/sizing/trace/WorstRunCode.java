package wayside.sizing.trace;

import java.util.List;

/** How the run of a trip that ended worst went; with its sun, where sun was to be had. */
public enum WorstRunCode implements MessageCode {
    RAN_FLAT(
            Slot.number("runs", Unit.COUNT),
            Slot.number("day", Unit.COUNT),
            Slot.number("hour", Unit.COUNT),
            Slot.number("shortHours", Unit.HOUR),
            Slot.number("unmet", Unit.WATT_HOUR),
            Slot.number("sun", Unit.WATT_HOUR).orNot(),
            Slot.number("sunShare", Unit.SHARE).orNot()),
    LASTED(
            Slot.number("runs", Unit.COUNT),
            Slot.number("lowest", Unit.SHARE),
            Slot.number("sun", Unit.WATT_HOUR).orNot(),
            Slot.number("sunShare", Unit.SHARE).orNot());

    @SuppressWarnings("ImmutableEnumChecker") // a list that List.of made
    private final List<Slot> slots;

    WorstRunCode(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public String kind() {
        return "worst-run";
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
