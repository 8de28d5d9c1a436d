package wayside.sizing.trace;

import java.util.List;

/** What must hold between the parts of a system. */
public enum LawCode implements MessageCode {
    BANK_CARRIES_THE_DAYS,
    CHANCE_IS_ACCEPTED,
    VITAL_NEVER_SHORT,
    COMFORT_IS_SERVED,
    DAY_IS_BALANCED,
    SUN_FILLS_THE_DAY,
    BANK_IS_CHARGED,
    DISCHARGE_CURRENT,
    START_CURRENT,
    CHARGE_CURRENT,
    HOOKUP_CARRIES,
    INVERTER_RUNS_THE_HARDEST,
    INVERTER_STARTS_THE_HARDEST,
    ALTERNATOR_SHARE,
    PANELS_ON_THE_ROOF,
    BANK_IN_ITS_LOCKER,
    MASS_WITHIN_THE_PAYLOAD,
    PARTS_ARE_MADE,
    CONTROLLER_VOLTAGE,
    STRING_CHARGES,
    STRING_STARTS,
    FUSE_VOLTAGE,
    BREAKING_CAPACITY,
    CABLE_OUTLASTS_ITS_FUSE,
    FUSE_OPENS_AT_THE_FAR_END,
    TERMINALS_TAKE_THE_CABLE,
    AC_BREAKER,
    VOLTAGE_DROP,
    CIRCUIT_CAN_BE_WIRED;

    @Override
    public String kind() {
        return "law";
    }

    @Override
    public List<Slot> slots() {
        return List.of();
    }
}
