package wayside.sizing.system;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
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
    private static final Expression ARRAY = Expression.definition("P = E_sun / y");
    private static final Expression SUN = Expression.commonPractice("E_sun = max(0, E_in - sum(E_other))");
    private static final Expression TAKEN = Expression.definition("y = y_all s");
    private static final Expression INTO = Expression.commonPractice("E_in = E_d (1 + m) (1 - b + b / eta)");

    public ArrayNeed {
        balances = List.copyOf(balances);
    }

    static ArrayNeed of(Site site, Chargers chargers) {
        Derived through = throughTheBank();
        List<StayBalance> balances = new ArrayList<>();
        site.journey().stays().forEach(stay -> balances.add(balance(site, stay, chargers, through)));
        return new ArrayNeed(balances);
    }

    static Derived throughTheBank() {
        return Derived.convention(
                "share of the day's energy that goes through the bank",
                THROUGH_THE_BANK,
                Unit.SHARE,
                "Two thirds of the hours are without useful sun; the rest runs straight off the array",
                Source.commonPractice());
    }

    /** The stay that asks for the largest array; one without sun before all others. */
    public StayBalance worst() {
        return balances.stream()
                .max(Comparator.<StayBalance>comparingInt(b -> b.sunless() ? 1 : 0)
                        .thenComparingDouble(b -> b.arrayW().value()))
                .orElseThrow();
    }

    private static StayBalance balance(Site site, JourneyStay stay, Chargers chargers, Derived through) {
        OpenHours open = site.openHours(stay);
        Derived need = need(site, stay, open, chargers, through);
        boolean enoughIfOpen =
                need(site, stay, OpenHours.ALL, chargers, through).value() == 0;
        Derived offered = stay.month().yieldWhPerW();
        Derived yield = open.sun()
                .map(share -> TAKEN.value(
                        stay.label() + ": yield of a rated watt, while the bank may be charged",
                        Unit.WATT_HOUR_PER_WATT,
                        offered.as("y_all"),
                        share.as("s")))
                .orElse(offered);
        boolean sunless = offered.value() < LEAST_YIELD_WH_PER_W && need.value() > 0 && !enoughIfOpen;
        boolean shut = !sunless && yield.value() < LEAST_YIELD_WH_PER_W && need.value() > 0;
        Derived array = sunless || shut || need.value() == 0
                ? noArray(stay, sunless, shut)
                : ARRAY.value(stay.label() + ": array needed", Unit.WATT, need.as("E_sun"), yield.as("y"));
        return new StayBalance(stay, need, array, sunless, shut);
    }

    private static Derived noArray(JourneyStay stay, boolean sunless, boolean shut) {
        String reason = sunless
                ? "None helps: a rated watt gives less than 0.1 Wh a day"
                : shut
                        ? "None helps: the bank is too cold or too hot to be charged while the sun shines"
                        : "Nothing is left for the sun";
        return Derived.convention(stay.label() + ": array needed", 0, Unit.WATT, reason, Source.definition());
    }

    private static Derived need(Site site, JourneyStay stay, OpenHours open, Chargers chargers, Derived through) {
        Derived into = intoTheBank(stay, chargers, site.margin(), through);
        List<Input> inputs = new ArrayList<>(List.of(into.as("E_in")));
        others(stay, open, chargers).forEach(other -> inputs.add(other.as("E_other")));
        return SUN.value(stay.label() + ": energy that the sun must bring each day", Unit.WATT_HOUR, inputs);
    }

    /** What engine and hookup put into the bank on a day of the stay [Wh]. */
    static List<Derived> others(JourneyStay stay, OpenHours open, Chargers chargers) {
        List<Derived> others = new ArrayList<>();
        if (stay.drivingHours().value() > 0) {
            chargers.alternator()
                    .map(engine -> engine.energyPerDayWh(stay.label(), stay.drivingHours()))
                    .ifPresent(offered -> others.add(OpenHours.taken(open.driving(), offered)));
        }
        if (stay.hookupHours().value() > 0) {
            chargers.shore()
                    .map(shore -> Chargers.shoreWh(shore, stay))
                    .ifPresent(offered -> others.add(OpenHours.taken(open.hookup(), offered)));
        }
        return others;
    }

    private static Derived intoTheBank(JourneyStay stay, Chargers chargers, Derived margin, Derived through) {
        Derived daily = stay.budget().dailyTotalWh();
        Derived roundTrip = chargers.need().data().roundTripEfficiency();
        return INTO.value(
                stay.label() + ": energy to bring in each day",
                Unit.WATT_HOUR,
                daily.as("E_d"),
                margin.as("m"),
                through.as("b"),
                roundTrip.as("eta"));
    }
}
