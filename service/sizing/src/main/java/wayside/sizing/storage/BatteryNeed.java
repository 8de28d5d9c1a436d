package wayside.sizing.storage;

import wayside.sizing.trace.Derived;

/**
 * What a bank must carry, whatever its chemistry.
 *
 * @param dailyWh out of the terminals on a usual day [Wh]
 * @param autonomyDays that it must carry without any charge [d]
 * @param margin for loads to come [share], 0 or more
 * @param coldC temperature of the bank in the coldest part of the trip [C]
 * @param steadyPowerW power at which the average watt-hour leaves the terminals [W]
 * @param peakPowerW everything running at once [W]
 * @param busVoltageV nominal [V]: 12, 24 or 48
 */
public record BatteryNeed(
        Derived dailyWh,
        Derived autonomyDays,
        Derived margin,
        Derived coldC,
        Derived steadyPowerW,
        Derived peakPowerW,
        Derived busVoltageV) {}
