package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.UnitSize;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.PowerUnitReason;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Whether one self-contained unit (battery, inverter, charger and outlets in a case) would do, or parts must be wired. The
 * limits are those that such units commonly have; the one at hand may differ. Common practice, no source.
 *
 * @param nominalEnergyWh rated energy that it would need, exactly [Wh]
 * @param outletCurrentLimitA of its 12 V outlet [A]
 * @param fits whether none of the common limits is passed
 * @param buyable the smallest that would do; empty when none does
 * @param reasons the limits that are passed, then what to weigh
 */
public record PowerUnit(
        Derived nominalEnergyWh,
        Derived outletCurrentLimitA,
        boolean fits,
        Optional<BuyableUnit> buyable,
        List<Message> reasons) {
    private static final double OUTLET_A = 25;
    private static final double OUTLET_V = 12;
    private static final double SOCKET_CHARGE_W = 100;

    public PowerUnit {
        reasons = List.copyOf(reasons);
    }

    static PowerUnit of(
            Site site,
            BankChoice bank,
            Optional<InverterChoice> inverter,
            Optional<ArrayChoice> array,
            Chargers chargers) {
        Derived nominal = neededWh(site, bank);
        List<UnitSize> units = site.sizes().units();
        UnitSize largest = units.get(units.size() - 1);
        Optional<UnitSize> next = units.stream()
                .filter(unit -> unit.energyWh() >= nominal.value())
                .filter(unit -> inverter.map(i -> unit.inverterW()
                                        >= i.demand().peakPowerW().value()
                                && unit.surgeW() >= i.demand().surgePowerW().value())
                        .orElse(true))
                .filter(unit ->
                        array.map(a -> unit.solarW() >= a.powerW().value()).orElse(true))
                .findFirst();
        UnitSize held = next.orElse(largest);
        List<Message> against = new ArrayList<>();
        add(against, PowerUnitReason.TOO_MUCH_ENERGY, nominal, held.energyWh());
        addOutlet(against, site.journey().highestDemand().budget().demand().dc().peakPowerW());
        inverter.ifPresent(i -> {
            add(against, PowerUnitReason.TOO_MUCH_AC, i.demand().peakPowerW(), held.inverterW());
            add(against, PowerUnitReason.TOO_HARD_A_START, i.demand().surgePowerW(), held.surgeW());
        });
        array.ifPresent(a -> add(against, PowerUnitReason.TOO_MUCH_PANEL, a.powerW(), held.solarW()));
        chargers.alternator()
                .ifPresent(
                        a -> add(against, PowerUnitReason.TOO_MUCH_WHILE_DRIVING, a.chargerPowerW(), SOCKET_CHARGE_W));
        Optional<BuyableUnit> buyable =
                against.isEmpty() ? next.map(unit -> BuyableUnit.of(unit, nominal)) : Optional.empty();
        return new PowerUnit(nominal, outletLimit(), against.isEmpty(), buyable, withAdvice(against));
    }

    /** What was given, or what the days or the chance ask for; such units are made with lithium cells. */
    private static Derived neededWh(Site site, BankChoice bank) {
        boolean given = site.brief().system().nominalEnergyWh().isPresent();
        return bank.bank().data().chemistry().isLeadAcid() || given
                ? lithium(bank).nominalEnergyWh()
                : bank.neededWh();
    }

    private static void add(List<Message> against, PowerUnitReason code, Derived needed, double limit) {
        if (needed.value() > limit) {
            against.add(Message.of(
                    code, Parameter.number("needed", needed), Parameter.number("limit", limit, needed.unit())));
        }
    }

    private static void addOutlet(List<Message> against, Derived dcPeakW) {
        double limitW = OUTLET_A * OUTLET_V;
        if (dcPeakW.value() > limitW) {
            against.add(Message.of(
                    PowerUnitReason.TOO_MUCH_DC,
                    Parameter.number("needed", dcPeakW),
                    Parameter.number("current", OUTLET_A, Unit.AMPERE),
                    Parameter.number("limit", limitW, Unit.WATT)));
        }
    }

    private static List<Message> withAdvice(List<Message> against) {
        List<Message> reasons = new ArrayList<>(against);
        if (against.isEmpty()) {
            reasons.add(Message.of(PowerUnitReason.ALL_WITHIN));
            reasons.add(Message.of(PowerUnitReason.UNIT_IS_ONE_PIECE));
        } else {
            reasons.add(Message.of(PowerUnitReason.PARTS_GROW));
        }
        return reasons;
    }

    /** Such units are made with lithium cells. */
    private static BatteryBank lithium(BankChoice bank) {
        return bank.bank().data().chemistry().isLeadAcid()
                ? bank.byChemistry().stream()
                        .filter(other -> other.data().chemistry() == Chemistry.LFP)
                        .findFirst()
                        .orElseThrow()
                : bank.bank();
    }

    private static Derived outletLimit() {
        return Derived.convention(
                "self-contained unit: limit of its 12 V outlet",
                OUTLET_A,
                Unit.AMPERE,
                "A common limit; 25 A at 12 V are 300 W",
                Source.commonPractice());
    }
}
