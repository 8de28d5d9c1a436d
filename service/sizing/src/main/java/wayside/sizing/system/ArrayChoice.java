package wayside.sizing.system;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The array of a recommendation and its controller.
 *
 * @param powerW rated [W]
 * @param areaM2 of panel [m2]
 * @param controllers that it charges through
 * @param strings how it is strung
 * @param stringFuses whether each string needs one
 * @param yieldsWh what it brings on the mean day of each stay, in the order of the trip [Wh]
 */
public record ArrayChoice(
        Derived powerW,
        Derived areaM2,
        Controllers controllers,
        ArrayStrings strings,
        StringFuses stringFuses,
        List<Derived> yieldsWh) {
    private static final double ROOF_M2 = 6;
    private static final Expression AREA = Expression.definition("A = P / p");
    private static final Expression FULL_ROOF = Expression.definition("P = A p");

    public ArrayChoice {
        yieldsWh = List.copyOf(yieldsWh);
    }

    /** Empty when no array is needed or given, or no sun is to be had. */
    static Optional<ArrayChoice> of(Site site, BatteryBank bank, ArrayNeed need, Optional<Derived> powerW) {
        ArrayStrings.Limits limits = ArrayStrings.Limits.of(site);
        Derived power = given(site).or(() -> powerW).orElseGet(() -> sized(limits, need));
        return power.value() > 0 ? Optional.of(of(site, bank, limits, power)) : Optional.empty();
    }

    private static ArrayChoice of(Site site, BatteryBank bank, ArrayStrings.Limits limits, Derived power) {
        Derived density = TypicalModule.powerPerArea();
        Derived area = AREA.value("area of the array", Unit.SQUARE_METRE, power.as("P"), density.as("p"));
        ArrayStrings strings = ArrayStrings.of(limits, power);
        Controllers controllers = Controllers.of(strings, bank.bankVoltageV());
        List<Derived> yields = site.stays().stream()
                .map(stay -> stay.month().dailyWh(stay.label() + ": energy of the array, mean day", power))
                .toList();
        return new ArrayChoice(power, area, controllers, strings, StringFuses.of(strings, controllers), yields);
    }

    private static Derived sized(ArrayStrings.Limits limits, ArrayNeed need) {
        Derived needed = need.worst().arrayW();
        return needed.value() > 0 ? ArrayStrings.wholeStringsW(limits, needed) : needed;
    }

    private static Optional<Derived> given(Site site) {
        return site.brief().system().solarPowerW().isPresent()
                ? Optional.of(Derived.given(
                        "rated power of the array",
                        site.brief().system().solarPowerW().getAsDouble(),
                        Unit.WATT,
                        site.brief().system().at("solarPowerW")))
                : Optional.empty();
    }

    /** What the sun can't bring: no sun at all, or an array that is too small. */
    static Optional<Shortfall> shortfall(Site site, ArrayNeed need) {
        StayBalance worst = need.worst();
        if (worst.sunless()) {
            Derived available =
                    worst.stay().month().dailyWh(worst.stay().label() + ": energy of a full roof of panels", roofful());
            return Optional.of(new Shortfall(
                    "no-sun",
                    String.format(
                            Locale.ROOT,
                            "In %s there is next to no sun. Drive, plug in or bring a generator for what is needed.",
                            worst.stay().label()),
                    worst.needWh(),
                    available));
        }
        return given(site)
                .filter(power -> power.value() < worst.arrayW().value())
                .map(power -> new Shortfall(
                        "array-too-small",
                        String.format(
                                Locale.ROOT,
                                "In %s the array does not bring in what a day takes. Add panel, tilt it, drive or plug in"
                                        + " more, or run less.",
                                worst.stay().label()),
                        worst.arrayW(),
                        power));
    }

    private static Derived roofful() {
        Derived roof = Derived.convention(
                "free roof of a van",
                ROOF_M2,
                Unit.SQUARE_METRE,
                "Between vents and rails a long van leaves about so much",
                Source.commonPractice());
        Derived density = TypicalModule.powerPerArea();
        return FULL_ROOF.value("rated power of a full roof", Unit.WATT, roof.as("A"), density.as("p"));
    }

    List<Caution> cautions() {
        if (areaM2.value() <= ROOF_M2) {
            return List.of();
        }
        return List.of(new Caution(
                "array-larger-than-roof",
                Severity.WARNING,
                String.format(
                        Locale.ROOT,
                        "The sun alone would take %.0f m2 of panel; a long van has about %.0f m2 free. Tilt the panels"
                                + " towards the sun, drive or plug in more, or run less in that month.",
                        areaM2.value(),
                        ROOF_M2),
                Source.commonPractice()));
    }
}
