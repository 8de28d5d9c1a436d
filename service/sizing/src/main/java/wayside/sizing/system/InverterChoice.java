package wayside.sizing.system;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.demand.LoadDemand;
import wayside.sizing.demand.SupplyDemand;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.inverter.InverterRating;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
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
    private static final Expression CURRENT = Expression.definition("I = P_in / V_low");

    /** Empty when nothing runs on alternating current. */
    public static Optional<InverterChoice> of(EnergyBudget budget, BatteryBank bank) {
        return budget.inverterLoss()
                .map(loss -> of(budget, bank, budget.inverterRating().orElseThrow(), loss));
    }

    private static InverterChoice of(EnergyBudget budget, BatteryBank bank, InverterRating rating, InverterLoss loss) {
        Derived input = loss.fullBatteryPowerW(rating);
        Derived current = CURRENT.value(
                "inverter: battery current at its rating",
                Unit.AMPERE,
                input.as("P_in"),
                bank.lowestVoltageV().as("V_low"));
        List<LoadDemand> ac = budget.demand().loads().stream()
                .filter(LoadDemand::isBehindTheInverter)
                .toList();
        return new InverterChoice(
                rating,
                loss.idlePowerW(),
                current,
                budget.demand().ac(),
                ac.stream()
                        .max(Comparator.comparingDouble(
                                load -> load.powerOfOneW().value()))
                        .orElseThrow(),
                ac.stream()
                        .max(Comparator.comparingDouble(
                                load -> load.startOfOneW().value()))
                        .orElseThrow());
    }

    /** One that nobody makes. */
    public Optional<Shortfall> notMade(Site site) {
        boolean given = site.brief().system().inverter().continuousW().isPresent();
        return given || rating.buyable().isPresent()
                ? Optional.empty()
                : Optional.of(new Shortfall(
                        Message.of(ShortfallCode.INVERTER_NOT_MADE),
                        rating.leastW(),
                        rating.largestW(site.brief().system().sizes().inverters())));
    }

    /** A given inverter that can't run, or can't start, even the hardest load alone. */
    public Optional<Shortfall> shortfall() {
        if (hardest.powerOfOneW().value() > rating.continuousW().value()) {
            return Optional.of(new Shortfall(
                    Message.of(
                            ShortfallCode.INVERTER_TOO_SMALL,
                            Parameter.text("load", hardest.load().name())),
                    hardest.powerOfOneW(),
                    rating.continuousW()));
        }
        if (hardestStart.startOfOneW().value() > rating.surgeW().value()) {
            return Optional.of(new Shortfall(
                    Message.of(
                            ShortfallCode.INVERTER_SURGE_TOO_SMALL,
                            Parameter.text("load", hardestStart.load().name())),
                    hardestStart.startOfOneW(),
                    rating.surgeW()));
        }
        return Optional.empty();
    }
}
