package wayside.sizing.system;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Rated power that the array needs in each stay: {@code P = E_sun / y} with {@code E_sun = E_in - E_engine - E_hookup} and
 * {@code E_in = E_d (1 + m) (1 - b + b / eta)}: E_d [Wh] the day's energy, m [share] the margin, b [share] the part of it
 * that goes through the bank, eta [share] the bank's round trip, y [Wh/W] the yield of a rated watt. The stay that asks for
 * most is the design month: highest load by yield, not the darkest. Common practice, no source, but for y.
 *
 * @param balances by stay, in the order of the trip
 */
public record ArrayNeed(List<StayBalance> balances) {
    /** Below this no array of a sensible size helps [Wh/W a day]. */
    private static final double LEAST_YIELD_WH_PER_W = 0.1;

    private static final double THROUGH_THE_BANK = 2.0 / 3;

    public ArrayNeed {
        balances = List.copyOf(balances);
    }

    static ArrayNeed of(Site site, Chargers chargers) {
        Derived through = throughTheBank();
        List<StayBalance> balances = new ArrayList<>();
        site.stays().forEach(stay -> balances.add(balance(stay, chargers, through)));
        return new ArrayNeed(balances);
    }

    static Derived throughTheBank() {
        return Derived.convention("share of the day's energy that goes through the bank", THROUGH_THE_BANK, Unit.SHARE, "Two thirds of the hours are without useful sun; the rest runs straight off the array", Source.commonPractice());
    }

    /** The stay that asks for the largest array; one without sun before all others. */
    public StayBalance worst() {
        return balances.stream()
                .max(Comparator.<StayBalance>comparingInt(b -> b.sunless() ? 1 : 0)
                        .thenComparingDouble(b -> b.arrayW().value()))
                .orElseThrow();
    }

    private static StayBalance balance(SiteStay stay, Chargers chargers, Derived through) {
        Derived need = need(stay, chargers, through);
        Derived yield = stay.month().yieldWhPerW();
        boolean sunless = yield.value() < LEAST_YIELD_WH_PER_W && need.value() > 0;
        double power = sunless || need.value() == 0 ? 0 : need.value() / yield.value();
        Derived array = Derived.computed(
                stay.label() + ": array needed",
                power,
                Unit.WATT,
                Formula.definition(sunless ? "none: a rated watt gives less than 0.1 Wh a day" : "P = E_sun / y"),
                need.as("E_sun"),
                yield.as("y"));
        return new StayBalance(stay, need, array, sunless);
    }

    private static Derived need(SiteStay stay, Chargers chargers, Derived through) {
        Derived into = intoTheBank(stay, chargers, through);
        List<Input> inputs = new ArrayList<>(List.of(into.as("E_in")));
        double others = 0;
        StringBuilder text = new StringBuilder("E_sun = E_in");
        if (chargers.alternator().isPresent() && stay.drivingHours().value() > 0) {
            Derived engine = chargers.alternator().get().energyPerDayWh(stay.label(), stay.drivingHours());
            inputs.add(engine.as("E_engine"));
            text.append(" - E_engine");
            others += engine.value();
        }
        if (chargers.shore().isPresent() && stay.hookupHours().value() > 0) {
            Derived hookup = chargers.shore().get().energyPerDayWh(stay.label(), stay.hookupHours());
            inputs.add(hookup.as("E_hookup"));
            text.append(" - E_hookup");
            others += hookup.value();
        }
        return Derived.computed(
                stay.label() + ": energy that the sun must bring each day",
                Math.max(0, into.value() - others),
                Unit.WATT_HOUR,
                Formula.commonPractice(text.append(", at least 0").toString()),
                inputs.toArray(Input[]::new));
    }

    private static Derived intoTheBank(SiteStay stay, Chargers chargers, Derived through) {
        Derived daily = stay.need().dailyWh();
        Derived margin = stay.need().margin();
        Derived roundTrip = chargers.need().data().roundTripEfficiency();
        double loss = 1 - through.value() + through.value() / roundTrip.value();
        return Derived.computed(
                stay.label() + ": energy to bring in each day",
                daily.value() * (1 + margin.value()) * loss,
                Unit.WATT_HOUR,
                Formula.commonPractice("E_in = E_d (1 + m) (1 - b + b / eta)"),
                daily.as("E_d"),
                margin.as("m"),
                through.as("b"),
                roundTrip.as("eta"));
    }
}
