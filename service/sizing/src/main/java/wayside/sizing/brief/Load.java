package wayside.sizing.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Something the customer wants to run.
 *
 * @param at where it was given
 * @param name as the customer calls it, unique in its list
 * @param quantity how many of them, at least 1; one if absent
 * @param supply direct current if absent
 * @param power of one while it runs, at its own plug
 * @param hoursPerDay on time [h], 0 to 24; the length of the windows if absent
 * @param dutyCycle share of the on time in which it really runs; 1 if absent
 * @param windows when it may be on; any time if empty. Windows do not overlap
 * @param surge of one at its start; none if absent
 * @param tier how much it matters when the battery runs low; essential if absent
 * @param ambientDuty duty against ambient temperature, rising in temperature; replaces the duty cycle
 */
public record Load(
        At at,
        String name,
        Optional<Supply> supply,
        OptionalInt quantity,
        RunningPower power,
        OptionalDouble hoursPerDay,
        OptionalDouble dutyCycle,
        List<Window> windows,
        Optional<Surge> surge,
        Optional<Tier> tier,
        List<DutyPoint> ambientDuty)
        implements Placed {
    public Load {
        windows = List.copyOf(windows);
        ambientDuty = List.copyOf(ambientDuty);
    }

    /** How many of them, at least 1. */
    public int count() {
        return quantity.orElse(1);
    }

    /** Whether it runs behind the inverter. */
    public boolean isAc() {
        return supply.orElse(Supply.DC) == Supply.AC;
    }

    /** Whether the trip fails if this load goes short. */
    public boolean isEssential() {
        return tier.orElse(Tier.ESSENTIAL) != Tier.COMFORT;
    }

    /** Loads as a list that stands there. */
    public static List<Load> list(At at, Load... loads) {
        List<Load> placed = new ArrayList<>();
        for (Load load : loads) {
            placed.add(load.standingAt(at.entry(placed.size())));
        }
        return placed;
    }

    private Load standingAt(At place) {
        return new Load(
                place, name, supply, quantity, power, hoursPerDay, dutyCycle, windows, surge, tier, ambientDuty);
    }

    /** A single essential direct-current load that is on for so many hours a day. */
    public static Load dc(String name, double powerW, double hoursPerDay) {
        return new Load(
                At.ROOT,
                name,
                Optional.empty(),
                OptionalInt.empty(),
                new RunningPower.Watts(powerW),
                OptionalDouble.of(hoursPerDay),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
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

    /** The same load drawing another power. */
    public Load drawing(RunningPower newPower) {
        return new Load(
                at, name, supply, quantity, newPower, hoursPerDay, dutyCycle, windows, surge, tier, ambientDuty);
    }

    public Load suppliedBy(Supply newSupply) {
        return new Load(
                at,
                name,
                Optional.of(newSupply),
                quantity,
                power,
                hoursPerDay,
                dutyCycle,
                windows,
                surge,
                tier,
                ambientDuty);
    }

    /** The same load drawing so many times its power while it runs. */
    public Load drawing(double factor) {
        return drawing(power.times(factor));
    }

    public Load times(int newQuantity) {
        return new Load(
                at,
                name,
                supply,
                OptionalInt.of(newQuantity),
                power,
                hoursPerDay,
                dutyCycle,
                windows,
                surge,
                tier,
                ambientDuty);
    }

    public Load withDuty(double newDuty) {
        OptionalDouble duty = OptionalDouble.of(newDuty);
        return new Load(at, name, supply, quantity, power, hoursPerDay, duty, windows, surge, tier, ambientDuty);
    }

    public Load withSurge(Surge newSurge) {
        Optional<Surge> start = Optional.of(newSurge);
        return new Load(at, name, supply, quantity, power, hoursPerDay, dutyCycle, windows, start, tier, ambientDuty);
    }

    public Load during(Window... newWindows) {
        List<Window> hours = List.of(newWindows);
        return new Load(at, name, supply, quantity, power, hoursPerDay, dutyCycle, hours, surge, tier, ambientDuty);
    }

    public Load withAmbientDuty(DutyPoint... points) {
        List<DutyPoint> duty = List.of(points);
        return new Load(at, name, supply, quantity, power, hoursPerDay, dutyCycle, windows, surge, tier, duty);
    }

    /** The same load mattering so much. */
    public Load of(Tier newTier) {
        Optional<Tier> matters = Optional.of(newTier);
        return new Load(
                at, name, supply, quantity, power, hoursPerDay, dutyCycle, windows, surge, matters, ambientDuty);
    }
}
