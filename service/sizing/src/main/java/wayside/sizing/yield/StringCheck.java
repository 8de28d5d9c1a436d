package wayside.sizing.yield;

import wayside.sizing.solar.array.StringWindow;
import wayside.sizing.trace.Derived;

/**
 * Whether the modules' strings suit the charge controller.
 *
 * @param window how many modules may sit in series
 * @param seriesCount as wired, or as we chose
 * @param parallelCount strings side by side
 * @param coldOpenCircuitV of a string on the coldest morning [V]
 * @param hotWorkingV of a string on the hottest roof [V]
 * @param controllerMaximumV what the controller stands [V]
 * @param chargingV what it charges the bank with [V]
 * @param maximumCurrentA of the array [A]
 * @param conductorCurrentA for its cable and fuse [A]
 * @param withoutTrackerShare of the best power that a controller without a tracker would keep, in the sunniest month [share]
 */
public record StringCheck(
        StringWindow window,
        Derived seriesCount,
        Derived parallelCount,
        Derived coldOpenCircuitV,
        Derived hotWorkingV,
        Derived controllerMaximumV,
        Derived chargingV,
        Derived maximumCurrentA,
        Derived conductorCurrentA,
        Derived withoutTrackerShare) {
    /** Whether the count as wired lies within the window. */
    public boolean fits() {
        return !tooHigh() && !tooLow();
    }

    /** Whether a cold morning would drive the controller past its limit. */
    public boolean tooHigh() {
        return coldOpenCircuitV.value() > controllerMaximumV.value();
    }

    /** Whether a hot roof would leave too little voltage to charge. */
    public boolean tooLow() {
        return hotWorkingV.value() < chargingV.value();
    }
}
