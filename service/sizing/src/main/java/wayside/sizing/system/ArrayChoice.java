package wayside.sizing.system;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The array of a recommendation and its controller.
 *
 * @param powerW rated [W]
 * @param areaM2 of panel [m2]
 * @param controllerCurrentA rated output of the charge controller, or of all of them [A]
 * @param strings how it is strung
 * @param yieldsWh what it brings on the mean day of each stay, in the order of the trip [Wh]
 */
public record ArrayChoice(
        Derived powerW, Derived areaM2, Derived controllerCurrentA, ArrayStrings strings, List<Derived> yieldsWh) {
    /** Output currents that charge controllers are commonly made for [A]. Common practice, no source. */
    private static final double[] COMMON_CONTROLLERS_A = {10, 15, 20, 30, 40, 50, 60, 70, 85, 100};

    private static final Expression AREA = Expression.definition("A = P / p");
    private static final Expression CONTROLLER = Expression.definition("I = P / V");
    private static final NamedOperation RATING = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "the smallest of 10, 15, 20, 30, 40, 50, 60, 70, 85 and 100 A that is at least I; above, the next multiple of"
                    + " 100 A: several controllers",
            Source.commonPractice());
    private static final Expression WHOLE_STRINGS =
            Expression.commonPractice("P_array = ceil(P / (P_module n_min) - 1e-9) (P_module n_min)");

    public ArrayChoice {
        yieldsWh = List.copyOf(yieldsWh);
    }

    /** Empty when no array is needed or given, or no sun is to be had. */
    static Optional<ArrayChoice> of(Site site, BatteryBank bank, ArrayNeed need, Optional<Derived> powerW) {
        ArrayStrings.Limits limits = ArrayStrings.Limits.of(site, bank);
        Derived power = given(site).or(() -> powerW).orElseGet(() -> wholeStrings(need, limits));
        return power.value() > 0 ? Optional.of(of(site, bank, limits, power)) : Optional.empty();
    }

    private static ArrayChoice of(Site site, BatteryBank bank, ArrayStrings.Limits limits, Derived power) {
        Derived density = TypicalModule.powerPerArea();
        Derived area = AREA.value("area of the array", Unit.SQUARE_METRE, power.as("P"), density.as("p"));
        Derived needed = CONTROLLER.value(
                "charge controller: output needed",
                Unit.AMPERE,
                power.as("P"),
                bank.bankVoltageV().as("V"));
        Derived controller = RATING.value(
                "charge controller: rated output", controllerA(needed.value()), Unit.AMPERE, needed.as("I"));
        List<Derived> yields = site.journey().stays().stream()
                .map(stay -> stay.month().dailyWh(stay.label() + ": energy of the array, mean day", power))
                .toList();
        return new ArrayChoice(power, area, controller, ArrayStrings.of(limits, power), yields);
    }

    private static Derived wholeStrings(ArrayNeed need, ArrayStrings.Limits limits) {
        Derived needed = need.worst().arrayW();
        Derived each = TypicalModule.powerW();
        Derived series = limits.window().smallestSeriesCount();
        return WHOLE_STRINGS.value(
                "rated power of the array", Unit.WATT, needed.as("P"), each.as("P_module"), series.as("n_min"));
    }

    private static double controllerA(double neededA) {
        double largest = COMMON_CONTROLLERS_A[COMMON_CONTROLLERS_A.length - 1];
        return Arrays.stream(COMMON_CONTROLLERS_A)
                .filter(rating -> rating >= neededA)
                .findFirst()
                .orElseGet(() -> Math.ceil(neededA / largest) * largest);
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
