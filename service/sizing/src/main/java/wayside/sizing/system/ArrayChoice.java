package wayside.sizing.system;

import java.util.List;
import java.util.Optional;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
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
    private static final Expression AREA = Expression.definition("A = P / p");

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
        List<Derived> yields = site.journey().stays().stream()
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
    public static Optional<Shortfall> shortfall(Site site, ArrayNeed need) {
        StayBalance worst = need.worst();
        if (worst.sunless()) {
            Derived available = worst.stay()
                    .month()
                    .dailyWh(worst.stay().label() + ": energy of a full roof of panels", TypicalRoof.fullPowerW());
            return Optional.of(
                    new Shortfall(Message.of(ShortfallCode.NO_SUN, number(worst.stay())), worst.needWh(), available));
        }
        return given(site)
                .filter(power -> power.value() < worst.arrayW().value())
                .map(power -> new Shortfall(
                        Message.of(ShortfallCode.ARRAY_TOO_SMALL, number(worst.stay())), worst.arrayW(), power));
    }

    private static Parameter number(JourneyStay stay) {
        return Parameter.number("stay", stay.index() + 1, Unit.COUNT);
    }

    List<Caution> cautions() {
        if (areaM2.value() <= TypicalRoof.AREA_M2) {
            return List.of();
        }
        return List.of(Caution.commonPractice(
                Severity.WARNING,
                CautionCode.ARRAY_LARGER_THAN_ROOF,
                Parameter.number("area", areaM2),
                Parameter.number("roof", TypicalRoof.AREA_M2, Unit.SQUARE_METRE)));
    }
}
