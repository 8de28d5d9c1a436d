package wayside.sizing.endurance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Compartment;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.Load;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.journey.Journey;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.storage.MissingHeater;
import wayside.sizing.trace.ChangeCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Unit;

/** What may be done otherwise on a trip, all parts of the system as they are. */
public final class Habits {
    private static final double LESS_LOAD = 0.2;
    private static final double TILT_DEGREES = 30;

    private final Journey journey;
    private final List<Habit> habits = new ArrayList<>();

    private Habits(Journey journey) {
        this.journey = journey;
    }

    /**
     * Those that apply.
     *
     * @param coldHours in which the cold keeps charge out [h]
     * @param sun whether there is an array
     * @param engine whether a charger on the engine is there
     * @param hookup whether a shore charger is there
     */
    public static List<Habit> of(Journey journey, double coldHours, boolean sun, boolean engine, boolean hookup) {
        Habits all = new Habits(journey);
        if (sun) {
            all.tilt();
        }
        if (coldHours > 0) {
            all.warmth();
        }
        all.loads();
        if (engine && all.hasAnHourMore(JourneyStay::drivingHours)) {
            all.add(ChangeCode.MORE_DRIVING, journey.travelling(1, 0), Parameter.number("hours", 1, Unit.HOUR));
        }
        if (hookup && all.hasAnHourMore(JourneyStay::hookupHours)) {
            all.add(ChangeCode.MORE_HOOKUP, journey.travelling(0, 1), Parameter.number("hours", 1, Unit.HOUR));
        }
        return all.habits;
    }

    private void tilt() {
        boolean flat = journey.stays().get(0).month().array().position().tilt().value() == 0;
        if (flat) {
            habits.add(new Habit(
                    Message.of(ChangeCode.TILT_PANEL, Parameter.number("tilt", TILT_DEGREES, Unit.DEGREE)),
                    journey,
                    Optional.of(journey.panel().tilted(TILT_DEGREES))));
        }
    }

    /** A lithium bank that frost keeps from being charged may stand in the cabin, or have a heater. */
    private void warmth() {
        BankPlacement asked = journey.place().placement();
        if (journey.place().compartment() != Compartment.CABIN) {
            add(ChangeCode.WARMER_BATTERY, journey.in(asked.in(Compartment.CABIN)));
        }
        if (asked.heater().isEmpty()) {
            journey.coldest().bank().missingHeater().ifPresent(this::heater);
        }
    }

    private void heater(MissingHeater heater) {
        add(
                ChangeCode.HEATED_BATTERY,
                journey.in(heater.placement()),
                Parameter.number("power", heater.powerW()),
                Parameter.number("energy", heater.dayWh()));
    }

    private void loads() {
        EnergyBrief energy = journey.energyThroughTheInverter();
        int largest = largest();
        Load load = energy.loads().get(largest);
        add(
                ChangeCode.LESS_LOAD,
                journey.taking(energy.with(largest, load.drawing(1 - LESS_LOAD))),
                Parameter.number("less", LESS_LOAD, Unit.SHARE),
                Parameter.text("load", load.name()));
        inverterHours(energy)
                .ifPresent(hours -> add(
                        ChangeCode.INVERTER_OFF,
                        journey.taking(energy.through(energy.inverter().onFor(hours))),
                        Parameter.number("hours", hours, Unit.HOUR)));
    }

    private int largest() {
        List<LoadDemand> demands = journey.stays().get(0).budget().demand().loads();
        int largest = 0;
        for (int i = 1; i < demands.size(); i++) {
            if (demands.get(i).dailyEnergyWh().value()
                    > demands.get(largest).dailyEnergyWh().value()) {
                largest = i;
            }
        }
        return largest;
    }

    /** Hours a day in which some AC load is on, in full tenths, when that is well below those the inverter is. */
    private static Optional<Double> inverterHours(EnergyBrief energy) {
        double used = energy.loads().stream()
                .filter(Load::isAc)
                .mapToDouble(Load::hoursOn)
                .sum();
        double told = Math.ceil(10 * used - 1e-9) / 10;
        double on = energy.inverter().hoursPerDay().orElse(Unit.HOURS_PER_DAY);
        return used > 0 && told < 0.75 * on ? Optional.of(told) : Optional.empty();
    }

    private boolean hasAnHourMore(Function<JourneyStay, Derived> hours) {
        return journey.stays().stream().anyMatch(stay -> hours.apply(stay).value() + 1 <= Unit.HOURS_PER_DAY);
    }

    private void add(ChangeCode code, Journey changed, Parameter... parameters) {
        habits.add(new Habit(Message.of(code, parameters), changed, Optional.empty()));
    }
}
