package wayside.sizing.yield;

import wayside.sizing.solar.PanelTilt;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.solar.sky.SunMonth;
import wayside.sizing.trace.Derived;

/**
 * A month of a solar yield.
 *
 * @param month 1 to 12
 * @param solar sky, plane, cells and the yield of a rated watt
 * @param sun day length and noon height
 * @param tilt that would catch most
 * @param yieldWhPerDay out of the charge controller on the mean day [Wh]
 * @param lowWhPerDay what the sky's and the model's own errors leave in the worst of ten such cases [Wh]
 * @param highWhPerDay and in the best [Wh]
 */
public record YieldMonth(
        int month,
        SolarMonth solar,
        SunMonth sun,
        PanelTilt tilt,
        Derived yieldWhPerDay,
        Derived lowWhPerDay,
        Derived highWhPerDay) {}
