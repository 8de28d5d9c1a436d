package wayside.sizing.system;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Supply;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.Unit;

/**
 * The inverter of a recommendation.
 *
 * @param rating continuous and for a start
 * @param idleW drawn while it is on without load [W]
 * @param batteryCurrentA at its full rating and the bank's lowest voltage: what cable and fuse must carry [A]
 * @param demand of the AC loads together
 * @param hardest of the AC loads by running power
 * @param hardestStart of the AC loads by what one piece draws when it starts
 */
public record InverterChoice(
        InverterRating rating,
        Derived idleW,
        Derived batteryCurrentA,
        SupplyDemand demand,
        LoadDemand hardest,
        LoadDemand hardestStart) {

    /** Empty when nothing runs on alternating current. */
    static Optional<InverterChoice> of(EnergyBudget budget, BatteryBank bank) {
        return budget.inverterLoss()
                .map(loss -> of(budget, bank, budget.inverterRating().orElseThrow(), loss));
    }

    private static InverterChoice of(EnergyBudget budget, BatteryBank bank, InverterRating rating, InverterLoss loss) {
        Derived input = loss.fullBatteryPowerW(rating);
        Derived current = Derived.computed(
                "inverter: battery current at its rating",
                input.value() / bank.lowestVoltageV().value(),
                Unit.AMPERE,
                Formula.definition("I = P_in / V_low"),
                input.as("P_in"),
                bank.lowestVoltageV().as("V_low"));
        List<LoadDemand> ac = budget.demand().loads().stream()
                .filter(load -> load.load().isAc())
                .toList();
        return new InverterChoice(
                rating,
                loss.idlePowerW(),
                current,
                budget.demand().ac(),
                ac.stream()
                        .max(Comparator.comparingDouble(LoadDemand::powerOfOneW))
                        .orElseThrow(),
                ac.stream()
                        .max(Comparator.comparingDouble(LoadDemand::startOfOneW))
                        .orElseThrow());
    }

    /** A given inverter that can't run, or can't start, even the hardest load alone. */
    Optional<Shortfall> shortfall() {
        if (hardest.powerOfOneW() > rating.continuousW().value()) {
            return Optional.of(new Shortfall(
                    "inverter-too-small",
                    "The inverter you have cannot run \"" + hardest.load().name()
                            + "\", not even alone. Take a larger one, or run it from gas or a hookup.",
                    alone("running power of one " + hardest.load().name(), hardest.powerOfOneW(), hardest),
                    rating.continuousW()));
        }
        if (hardestStart.startOfOneW() > rating.surgeW().value()) {
            return Optional.of(new Shortfall(
                    "inverter-surge-too-small",
                    "The inverter you have trips when \"" + hardestStart.load().name()
                            + "\" starts. Take a larger one, or a load that starts softly.",
                    alone("start of one " + hardestStart.load().name(), hardestStart.startOfOneW(), hardestStart),
                    rating.surgeW()));
        }
        return Optional.empty();
    }

    private static Derived alone(String label, double watts, LoadDemand load) {
        return Derived.computed(
                label,
                watts,
                Unit.WATT,
                Formula.definition("P1, and Ps when it starts"),
                load.runningPowerW().as("P"),
                load.extraSurgeW().as("Ps"));
    }
}
