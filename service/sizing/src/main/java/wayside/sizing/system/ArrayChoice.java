package wayside.sizing.system;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import wayside.sizing.brief.ModuleSize;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.sizes.NextSize;
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
 * @param roofM2 free for panels [m2]
 * @param controllers that it charges through
 * @param strings how it is strung
 * @param stringFuses whether each string needs one
 * @param buyable the modules that it is made of; empty when its power was given
 * @param yieldsWh what it brings on the mean day of each stay, in the order of the trip [Wh]
 */
public record ArrayChoice(
        Derived powerW,
        Derived areaM2,
        Derived roofM2,
        Controllers controllers,
        ArrayStrings strings,
        StringFuses stringFuses,
        Optional<BuyableArray> buyable,
        List<Derived> yieldsWh) {
    private static final Expression AREA = Expression.definition("A = P / p");
    private static final Expression FULL_ROOF = Expression.definition("P = A p");
    private static final Expression DENSEST = Expression.definition("P = A P_module / (l w / 1000000)");
    private static final Expression NONE = Expression.definition("P = 0");

    public ArrayChoice {
        yieldsWh = List.copyOf(yieldsWh);
    }

    /** Empty when no array is needed, given or to be had, or no sun. */
    static Optional<ArrayChoice> of(Site site, BatteryBank bank, ArrayNeed need, SizePair pair) {
        if (given(site).isPresent()) {
            return given(site).filter(power -> power.value() > 0).map(power -> of(site, bank, power));
        }
        if (pair.solarPowerW().isPresent()) {
            return pair.array().map(array -> of(site, bank, array));
        }
        return sized(site, need).map(array -> of(site, bank, array));
    }

    /** As so many equal modules, on the fewest controllers. */
    private static ArrayChoice of(Site site, BatteryBank bank, Derived power) {
        Derived area = AREA.value(
                "area of the array",
                Unit.SQUARE_METRE,
                power.as("P"),
                TypicalModule.powerPerArea().as("p"));
        ArrayChoice best = null;
        for (ArrayStrings.Limits limits : ArrayStrings.Limits.of(site)) {
            ArrayStrings strings = ArrayStrings.of(limits, power);
            ArrayChoice choice =
                    of(site, bank, strings, power, area, TypicalModule.largestSeriesFuseA(), Optional.empty());
            if (best == null || choice.controllers().isBetterThan(best.controllers())) {
                best = choice;
            }
        }
        return Objects.requireNonNull(best);
    }

    private static ArrayChoice of(Site site, BatteryBank bank, BuyableArray array) {
        return of(
                site,
                bank,
                ArrayStrings.of(site, array),
                array.powerW(),
                array.areaM2(),
                ModulePart.largestSeriesFuseA(array.option().module()),
                Optional.of(array));
    }

    private static ArrayChoice of(
            Site site,
            BatteryBank bank,
            ArrayStrings strings,
            Derived power,
            Derived area,
            Derived largestSeriesFuseA,
            Optional<BuyableArray> buyable) {
        Controllers controllers = Controllers.of(site, strings, bank.bankVoltageV());
        List<Derived> yields = site.journey().stays().stream()
                .map(stay -> stay.month().dailyWh(stay.label() + ": energy of the array, mean day", power))
                .toList();
        StringFuses fuses = StringFuses.of(strings, controllers, largestSeriesFuseA);
        return new ArrayChoice(power, area, RoofRoom.of(site).areaM2(), controllers, strings, fuses, buyable, yields);
    }

    /** The next that exists above the need, or the largest that the roof takes. */
    private static Optional<BuyableArray> sized(Site site, ArrayNeed need) {
        Derived needed = need.worst().arrayW();
        if (needed.value() <= 0) {
            return Optional.empty();
        }
        ArrayLadder ladder = ArrayLadder.of(site);
        return ladder.next(needed.value())
                .or(ladder::largest)
                .map(option -> BuyableArray.of(site, option, BuyableArray.NEXT, needed.as("P")));
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

    /** What the sun can't bring: no sun at all, an array that is too small, or a roof. */
    static List<Shortfall> shortfalls(Site site, ArrayNeed need, Optional<ArrayChoice> array) {
        StayBalance worst = need.worst();
        Derived fullRoof = fullRoofW(site);
        if (worst.sunless()) {
            Derived available =
                    worst.stay().month().dailyWh(worst.stay().label() + ": energy of a full roof of panels", fullRoof);
            return List.of(
                    new Shortfall(Message.of(ShortfallCode.NO_SUN, number(worst.stay())), worst.needWh(), available));
        }
        List<Shortfall> shortfalls = new ArrayList<>();
        Derived built =
                array.map(ArrayChoice::powerW).orElseGet(() -> NONE.value("rated power of the array", Unit.WATT));
        boolean tooSmall = !NextSize.reaches(built.value(), worst.arrayW().value());
        array.flatMap(ArrayChoice::notCharged).ifPresent(shortfalls::add);
        if (given(site).isPresent()) {
            given(site)
                    .filter(power -> RoofRoom.of(site).isMeasured())
                    .filter(power -> !NextSize.reaches(densestRoofW(site).value(), power.value()))
                    .ifPresent(power -> shortfalls.add(
                            new Shortfall(Message.of(ShortfallCode.ROOF_TOO_SMALL), power, densestRoofW(site))));
            if (tooSmall) {
                shortfalls.add(new Shortfall(
                        Message.of(ShortfallCode.ARRAY_TOO_SMALL, number(worst.stay())), worst.arrayW(), built));
            }
        } else if (tooSmall) {
            ArrayLadder ladder = ArrayLadder.of(site);
            shortfalls.add(new Shortfall(
                    Message.of(ladder.isEmpty() ? ShortfallCode.NO_CONTROLLER : ShortfallCode.ROOF_TOO_SMALL),
                    worst.arrayW(),
                    built));
        }
        return shortfalls;
    }

    /** Strings of a voltage, or a current, that no charge controller stands. */
    private Optional<Shortfall> notCharged() {
        Message message = Message.of(ShortfallCode.NO_CONTROLLER);
        if (!strings.window().fits()) {
            return Optional.of(new Shortfall(message, strings.coldOpenCircuitV(), strings.controllerMaximumV()));
        }
        return controllers.areOverloaded()
                ? Optional.of(new Shortfall(message, controllers.neededA(), controllers.ratedA()))
                : Optional.empty();
    }

    private static Derived fullRoofW(Site site) {
        return FULL_ROOF.value(
                "rated power of a full roof",
                Unit.WATT,
                RoofRoom.of(site).areaM2().as("A"),
                TypicalModule.powerPerArea().as("p"));
    }

    /** What the roof would carry of the densest module that exists, edge to edge: more than that no array of known power is. */
    private static Derived densestRoofW(Site site) {
        ModuleSize densest = site.sizes().modules().stream()
                .max(Comparator.comparingDouble(module -> module.powerW()
                        / (module.box().lengthMm() * module.box().widthMm())))
                .orElseThrow();
        return DENSEST.value(
                "rated power of a roof full of the densest modules",
                Unit.WATT,
                RoofRoom.of(site).areaM2().as("A"),
                ModulePart.powerW(densest).as("P_module"),
                ModulePart.lengthMm(densest).as("l"),
                ModulePart.widthMm(densest).as("w"));
    }

    private static Parameter number(JourneyStay stay) {
        return Parameter.number("stay", stay.index() + 1, Unit.COUNT);
    }

    /** A given array that is larger than a roof that nobody measured, or fits it only as modules denser than usual. */
    List<Caution> cautions() {
        if (buyable.isPresent() || NextSize.reaches(roofM2.value(), areaM2.value())) {
            return List.of();
        }
        return List.of(Caution.commonPractice(
                Severity.WARNING,
                CautionCode.ARRAY_LARGER_THAN_ROOF,
                Parameter.number("area", areaM2),
                Parameter.number("roof", roofM2)));
    }
}
