package wayside.sizing.system;

import java.util.Comparator;
import java.util.Optional;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
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

    static RuleOfThumb of(Site site) {
        Derived daily = site.thirstiest().budget().dailyTotalWh();
        Derived days = assumed("rule of thumb: days", DAYS, Unit.DAY, "Two days is what most people reckon with");
        ChemistryData data = site.chemistry();
        Derived nominal = Derived.computed(
                "rule of thumb: rated energy",
                daily.value() * DAYS / data.usableShare().value(),
                Unit.WATT_HOUR,
                Formula.commonPractice("E = E_d n / f_use"),
                daily.as("E_d"),
                days.as("n"),
                data.usableShare().as("f_use"));
        return new RuleOfThumb(nominal, solar(site, daily), days);
    }

    private static Optional<Derived> solar(Site site, Derived daily) {
        Derived sun = site.stays().stream()
                .map(stay -> stay.month().horizontalKwhM2())
                .min(Comparator.comparingDouble(Derived::value))
                .orElseThrow();
        if (sun.value() < LEAST_SUN_HOURS) {
            return Optional.empty();
        }
        Derived oversize =
                assumed("rule of thumb: array factor", OVERSIZE, Unit.COUNT, "A third more than the plain division");
        return Optional.of(Derived.computed(
                "rule of thumb: rated power of the array",
                daily.value() * OVERSIZE / sun.value(),
                Unit.WATT,
                Formula.commonPractice("P = f E_d / H, H read as hours of full sun"),
                oversize.as("f"),
                daily.as("E_d"),
                sun.as("H")));
    }

    private static Derived assumed(String label, double value, Unit unit, String reason) {
        return Derived.convention(label, value, unit, reason, Source.commonPractice());
    }
}
