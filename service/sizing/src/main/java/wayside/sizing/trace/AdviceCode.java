package wayside.sizing.trace;

import java.util.List;

/** The answer in a sentence; with the change that helps most, when one helps. */
public enum AdviceCode implements MessageCode {
    RUNS_FLAT(
            Slot.number("battery", Unit.WATT_HOUR),
            Slot.number("panel", Unit.WATT).orNot(),
            Slot.number("chance", Unit.SHARE),
            Slot.text("load").orNot(),
            Slot.number("servedShare", Unit.SHARE).orNot(),
            Slot.number("fullNights", Unit.COUNT).orNot(),
            Slot.number("nights", Unit.COUNT).orNot(),
            Slot.number("drainedNights", Unit.DAY).orNot(),
            Slot.message("change").orNot(),
            Slot.number("changedChance", Unit.SHARE).orNot()),
    RUNS_FLAT_WHEN_OLD(
            Slot.number("battery", Unit.WATT_HOUR),
            Slot.number("panel", Unit.WATT).orNot(),
            Slot.number("moreDriving", Unit.HOUR).orNot(),
            Slot.number("chance", Unit.SHARE),
            Slot.text("load").orNot(),
            Slot.number("servedShare", Unit.SHARE).orNot(),
            Slot.number("fullNights", Unit.COUNT).orNot(),
            Slot.number("nights", Unit.COUNT).orNot(),
            Slot.number("drainedNights", Unit.DAY).orNot(),
            Slot.number("smallerBattery", Unit.WATT_HOUR).orNot(),
            Slot.number("smallerPanel", Unit.WATT).orNot(),
            Slot.message("tripChange").orNot(),
            Slot.message("change").orNot(),
            Slot.number("changedChance", Unit.SHARE).orNot());

    @SuppressWarnings("ImmutableEnumChecker") // a list that List.of made
    private final List<Slot> slots;

    AdviceCode(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public String kind() {
        return "advice";
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
