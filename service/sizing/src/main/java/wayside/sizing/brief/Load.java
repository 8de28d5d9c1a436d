package wayside.sizing.brief;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something the customer wants to run.
 *
 * @param name as the customer calls it, unique in its list
 * @param quantity how many of them, at least 1
 * @param power of one while it runs, at its own plug
 * @param hoursPerDay on time [h], 0 to 24; the length of the windows if absent
 * @param dutyCycle share of the on time in which it really runs; 1 if absent
 * @param windows when it may be on; any time if empty. Windows do not overlap
 * @param surge of one at its start; none if absent
 * @param essential whether the trip fails if this load goes short
 * @param ambientDuty duty against ambient temperature, rising in temperature; replaces the duty cycle
 */
public record Load(
        String name,
        Supply supply,
        int quantity,
        RunningPower power,
        OptionalDouble hoursPerDay,
        OptionalDouble dutyCycle,
        List<Window> windows,
        Optional<Surge> surge,
        boolean essential,
        List<DutyPoint> ambientDuty) {
    public Load {
        windows = List.copyOf(windows);
        ambientDuty = List.copyOf(ambientDuty);
    }

    /** A single essential direct-current load that is on for so many hours a day. */
    public static Load dc(String name, double powerW, double hoursPerDay) {
        return new Load(
                name,
                Supply.DC,
                1,
                new RunningPower.Watts(powerW),
                OptionalDouble.of(hoursPerDay),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty(),
                true,
                List.of());
    }

    /** A single essential load behind the inverter that is on for so many hours a day. */
    public static Load ac(String name, double powerW, double hoursPerDay) {
        return dc(name, powerW, hoursPerDay).suppliedBy(Supply.AC);
    }

    /** On time of a day [h]: as given, or the length of the windows. */
    public double hoursOn() {
        return hoursPerDay.orElseGet(
                () -> windows.stream().mapToInt(Window::minutes).sum() / 60.0);
    }

    public Load suppliedBy(Supply newSupply) {
        return new Load(
                name, newSupply, quantity, power, hoursPerDay, dutyCycle, windows, surge, essential, ambientDuty);
    }

    /** The same load drawing so many times its power while it runs. */
    public Load drawing(double factor) {
        return new Load(
                name,
                supply,
                quantity,
                power.times(factor),
                hoursPerDay,
                dutyCycle,
                windows,
                surge,
                essential,
                ambientDuty);
    }

    public Load times(int newQuantity) {
        return new Load(
                name, supply, newQuantity, power, hoursPerDay, dutyCycle, windows, surge, essential, ambientDuty);
    }

    public Load withDuty(double newDuty) {
        return new Load(
                name,
                supply,
                quantity,
                power,
                hoursPerDay,
                OptionalDouble.of(newDuty),
                windows,
                surge,
                essential,
                ambientDuty);
    }

    public Load withSurge(Surge newSurge) {
        return new Load(
                name,
                supply,
                quantity,
                power,
                hoursPerDay,
                dutyCycle,
                windows,
                Optional.of(newSurge),
                essential,
                ambientDuty);
    }

    public Load during(Window... newWindows) {
        return new Load(
                name,
                supply,
                quantity,
                power,
                hoursPerDay,
                dutyCycle,
                List.of(newWindows),
                surge,
                essential,
                ambientDuty);
    }

    public Load withAmbientDuty(DutyPoint... points) {
        return new Load(
                name, supply, quantity, power, hoursPerDay, dutyCycle, windows, surge, essential, List.of(points));
    }

    /** A load that may go short without the trip failing. */
    public Load notEssential() {
        return new Load(name, supply, quantity, power, hoursPerDay, dutyCycle, windows, surge, false, ambientDuty);
    }
}
