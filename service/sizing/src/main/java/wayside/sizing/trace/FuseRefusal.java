package wayside.sizing.trace;

import java.util.List;

/** The first of three checks that a kind of fuse fails. */
public enum FuseRefusal implements MessageCode {
    /** Only kinds for solar modules protect their strings. */
    NOT_PHOTOVOLTAIC,
    /** And those kinds are looked for nowhere else. */
    FOR_SOLAR_MODULES,
    RATING(Slot.number("rating", Unit.AMPERE)),
    VOLTAGE(Slot.number("ratedVoltage", Unit.VOLT), Slot.number("highestVoltage", Unit.VOLT)),
    BREAKING_CAPACITY(Slot.number("breaking", Unit.AMPERE), Slot.number("shortCircuit", Unit.AMPERE));

    @SuppressWarnings("ImmutableEnumChecker") // a list that List.of made
    private final List<Slot> slots;

    FuseRefusal(Slot... slots) {
        this.slots = List.of(slots);
    }

    @Override
    public String kind() {
        return "fuse-refusal";
    }

    @Override
    public List<Slot> slots() {
        return slots;
    }
}
