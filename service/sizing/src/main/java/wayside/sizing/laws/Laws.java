package wayside.sizing.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.system.InverterChoice;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Shortfall;

/**
 * The laws of a system, each once: the circuits' by the one that is nearest to its limit.
 *
 * @param all in the order in which a builder goes through a system
 */
public record Laws(List<Law> all) {
    /** Judgements by days of autonomy and the worst month, which a chance replaces. */
    private static final Set<LawCode> BY_DAYS =
            Set.of(LawCode.BANK_CARRIES_THE_DAYS, LawCode.SUN_FILLS_THE_DAY, LawCode.BANK_IS_CHARGED);

    public Laws {
        all = List.copyOf(all);
    }

    /** Of a system that is sized by days of autonomy and the worst month. */
    public static Laws of(SizedSystem system) {
        List<Law> laws = new ArrayList<>(PartLaws.ofTheDays(system));
        laws.addAll(of(
                        system.battery().bank(),
                        system.energyBudget(),
                        system.inverter(),
                        ChargingCurrents.of(system.chargers(), system.array()))
                .all);
        system.chargers().alternator().ifPresent(charger -> laws.add(PartLaws.ofTheAlternator(charger)));
        laws.addAll(
                new CircuitLaws(system.circuits(), system.site().busVoltageV().value()).all());
        return new Laws(laws);
    }

    /** Of a bank with what draws on it and what charges it. */
    public static Laws of(
            BatteryBank bank, EnergyBudget budget, Optional<InverterChoice> inverter, ChargingCurrents currents) {
        List<Law> laws = new ArrayList<>(new DischargeLaws(bank, budget).all());
        laws.add(new ChargeLaw(bank, currents).law());
        inverter.ifPresent(chosen -> laws.addAll(PartLaws.ofTheInverter(chosen)));
        return new Laws(laws);
    }

    /** Of the same system, judged by a chance of running flat instead. */
    public static Laws of(SizedSystem system, Law chance) {
        List<Law> laws = new ArrayList<>(List.of(chance));
        of(system).all.stream().filter(law -> !BY_DAYS.contains(law.code())).forEach(laws::add);
        return new Laws(laws);
    }

    /** Those that are broken, and what would do. */
    public List<Shortfall> shortfalls() {
        return all.stream().map(Law::shortfall).flatMap(Optional::stream).toList();
    }

    /** What must be set or watched so that the others hold. */
    public List<Caution> cautions() {
        return all.stream().map(Law::caution).flatMap(Optional::stream).toList();
    }
}
