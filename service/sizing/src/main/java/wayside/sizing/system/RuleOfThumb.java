package wayside.sizing.system;

import java.util.Comparator;
import java.util.Optional;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * What the trade would say without reckoning: two days by the usable share, and a day with a third more by the sun hours of
 * the darkest stay.
 *
 * @param nominalEnergyWh of the bank [Wh]
 * @param solarPowerW of the array [W]; empty without sun
 * @param autonomyDays that the rule counts with [d]
 */
public record RuleOfThumb(Derived nominalEnergyWh, Optional<Derived> solarPowerW, Derived autonomyDays) {
    private static final double DAYS = 2;
    private static final double OVERSIZE = 1.3;
    private static final double LEAST_SUN_HOURS = 0.1;
    private static final Expression BANK = Expression.commonPractice("E = E_d n / f_use");
    /** The month's irradiation [kWh/m2] is read as hours of full sun, 1 kW/m2. */
    private static final Expression ARRAY = Expression.commonPractice("P = E_d f / H");

    static RuleOfThumb of(Site site) {
        Derived daily = site.journey().highestDemand().budget().dailyTotalWh();
        Derived days = assumed("rule of thumb: days", DAYS, Unit.DAY, "Two days is what most people reckon with");
        ChemistryData data = site.chemistry();
        Derived nominal = BANK.value(
                "rule of thumb: rated energy",
                Unit.WATT_HOUR,
                daily.as("E_d"),
                days.as("n"),
                data.usableShare().as("f_use"));
        return new RuleOfThumb(nominal, solar(site, daily), days);
    }

    private static Optional<Derived> solar(Site site, Derived daily) {
        Derived sun = site.journey().stays().stream()
                .map(stay -> stay.month().horizontalKwhM2())
                .min(Comparator.comparingDouble(Derived::value))
                .orElseThrow();
        if (sun.value() < LEAST_SUN_HOURS) {
            return Optional.empty();
        }
        Derived oversize =
                assumed("rule of thumb: array factor", OVERSIZE, Unit.COUNT, "A third more than the plain division");
        return Optional.of(ARRAY.value(
                "rule of thumb: rated power of the array", Unit.WATT, daily.as("E_d"), oversize.as("f"), sun.as("H")));
    }

    private static Derived assumed(String label, double value, Unit unit, String reason) {
        return Derived.convention(label, value, unit, reason, Source.commonPractice());
    }
}
