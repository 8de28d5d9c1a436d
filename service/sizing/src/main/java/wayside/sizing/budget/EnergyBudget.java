package wayside.sizing.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.demand.Demand;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.inverter.DcConverter;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Unit;

/**
 * What the battery must deliver on a usual day, and at what power.
 *
 * @param demand the loads at their plugs
 * @param loads each with its share
 * @param dailyLoadWh all loads at their plugs [Wh]
 * @param standbyWh of outlets, monitor and electronics [Wh]
 * @param dailyLossWh standby, inverter, converter and heater together [Wh]
 * @param dailyTotalWh out of the battery [Wh]
 * @param dailyTotalAh the same at the nominal bus voltage [Ah]
 * @param busVoltageV nominal [V]
 * @param lowestVoltageV at which currents are taken [V]
 * @param dcPeakA of the DC loads and standby [A]
 * @param acPeakA into the inverter, all AC loads running [A]; 0 without AC loads
 * @param inverterRating when there is an AC load
 * @param inverterLoss when there is an AC load
 * @param converter when the DC loads are made for another voltage than the bus
 * @param relief what a hookup takes off the battery, on a day that has one
 * @param heaterWh what a heater of the bank takes on a cold day [Wh]
 * @param inverter as far as the request says
 * @param hourlyW mean power out of the battery in each local hour; sums to the daily total
 */
public record EnergyBudget(
        Demand demand,
        List<LoadShare> loads,
        Derived dailyLoadWh,
        Derived standbyWh,
        Derived dailyLossWh,
        Derived dailyTotalWh,
        Derived dailyTotalAh,
        Derived busVoltageV,
        Derived lowestVoltageV,
        Derived dcPeakA,
        Derived acPeakA,
        Optional<InverterRating> inverterRating,
        Optional<InverterLoss> inverterLoss,
        Optional<DcConverter> converter,
        Optional<HookupRelief> relief,
        Optional<Derived> heaterWh,
        InverterSpec inverter,
        List<Double> hourlyW) {
    /** Idle loss above this share of the day's total is worth a word. */
    private static final double NOTABLE_IDLE_SHARE = 0.1;

    public EnergyBudget {
        loads = List.copyOf(loads);
        hourlyW = List.copyOf(hourlyW);
    }

    /** The budget as an answer of its own. */
    public static EnergyBudget of(EnergyBrief brief) {
        return of(brief, BudgetDefaults.ambientC(brief), "");
    }

    /**
     * The budget as a chapter of a larger answer.
     *
     * @param ambientC air temperature for the fridge's duty [C]
     * @param stay opens the labels of what differs from stay to stay: {@code stay 2: }
     */
    public static EnergyBudget of(EnergyBrief brief, Derived ambientC, String stay) {
        return of(brief, ambientC, stay, MainsUse.NONE, Optional.empty());
    }

    /**
     * The same of a day at a hookup, of a trip whose bank may be heated.
     *
     * @param mains what its AC loads may take from a hookup
     * @param heaterWh what its heater takes on a cold day [Wh]
     */
    public static EnergyBudget of(
            EnergyBrief brief, Derived ambientC, String stay, MainsUse mains, Optional<Derived> heaterWh) {
        Demand demand = Demand.of(brief.loads(), ambientC, stay, mains.only());
        Optional<InverterRating> rating = demand.hasAc()
                ? Optional.of(InverterRating.of(demand.ac(), brief.inverter(), brief.inverterSizes()))
                : Optional.empty();
        Optional<InverterLoss> loss = rating.map(r -> InverterLoss.of(demand, brief.inverter(), r));
        Derived standby = BudgetDefaults.standbyWh(brief);
        Derived bus = BudgetDefaults.busVoltageV(brief);
        Optional<DcConverter> converter = DcConverter.find(brief, demand, bus);
        Optional<HookupRelief> relief = mains.hookup().map(hookup -> HookupRelief.of(hookup, demand, loss));
        return new BudgetTotals(demand, rating, loss, converter, relief, heaterWh, standby, bus, brief.inverter())
                .budget();
    }

    /** The inverter as it stands, when loads change that it was chosen for: rating, idle power and hours stay. */
    public InverterSpec inverterAsItIs(InverterSpec asked) {
        return inverterRating
                .map(rating -> new InverterSpec(
                        asked.at(),
                        given(rating.continuousW()),
                        given(rating.surgeW()),
                        given(inverterLoss.orElseThrow().idlePowerW()),
                        asked.efficiency(),
                        given(inverterLoss.orElseThrow().hoursOn())))
                .orElse(asked);
    }

    /** Part of a load's energy of an hour that comes out of the battery [share]. */
    public double left(LoadDemand load, int hour) {
        return relief.map(hookup -> hookup.left(load, hour)).orElse(load.onlyAtAHookup() ? 0.0 : 1.0);
    }

    /** Part of an hour in which nothing is plugged in [share]. */
    public double unplugged(int hour) {
        return relief.map(hookup -> hookup.unplugged(hour)).orElse(1.0);
    }

    /** What a power of the DC loads takes out of the bus [W]. */
    public Derived dcFromTheBusW(Derived loadsW) {
        return converter.map(between -> between.fromTheBusW(loadsW)).orElse(loadsW);
    }

    private static OptionalDouble given(Derived value) {
        return OptionalDouble.of(value.value());
    }

    /** What the loads leave open and is no number. */
    public List<Assumption> choices() {
        return demand.loads().stream()
                .flatMap(demanded -> LoadChoices.of(demanded.load()).stream())
                .toList();
    }

    /** What its loads and its inverter give cause to say, the same in every answer that holds a budget. */
    public List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>(LoadSuspicions.of(demand.loads(), busVoltageV.value()));
        cautions.addAll(InverterSuspicions.of(this));
        inverterLoss
                .map(loss -> loss.idleWh().value())
                .filter(idleWh -> idleWh > NOTABLE_IDLE_SHARE * dailyTotalWh.value())
                .map(this::inverterIdle)
                .ifPresent(cautions::add);
        return List.copyOf(cautions);
    }

    private Caution inverterIdle(double idleWh) {
        return Caution.commonPractice(
                        Severity.NOTE, CautionCode.INVERTER_IDLE, Parameter.number("idle", idleWh, Unit.WATT_HOUR))
                .at(inverter.at("hoursPerDay"));
    }
}
