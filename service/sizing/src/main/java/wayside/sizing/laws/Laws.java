package wayside.sizing.laws;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wayside.sizing.brief.BankRates;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.journey.Journey;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.system.InverterChoice;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.MessageCode;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;

/**
 * The laws of a system, each once: the circuits' by the one that is nearest to its limit.
 *
 * @param all in the order in which a builder goes through a system
 */
public record Laws(List<Law> all) {
    /** Judgements by days of autonomy and the worst month, which a chance replaces. */
    private static final Set<MessageCode> BY_DAYS =
            Set.of(ShortfallCode.BANK_TOO_SMALL, ShortfallCode.ARRAY_TOO_SMALL, ShortfallCode.NO_SUN);

    /** The same of an array that was sized; a given one must fit the roof all the same. */
    private static final Set<MessageCode> OF_THE_WORST_MONTH =
            Set.of(ShortfallCode.ROOF_TOO_SMALL, ShortfallCode.NO_CONTROLLER);

    public Laws {
        all = List.copyOf(all);
    }

    /** Of a system that is sized by days of autonomy and the worst month. */
    public static Laws of(SizedSystem system) {
        List<Law> laws = new ArrayList<>(PartLaws.ofTheDays(system));
        laws.addAll(besideTheDays(system));
        PartLaws.shortfalls(system).forEach(shortfall -> breakLaw(laws, system, shortfall));
        return new Laws(laws);
    }

    /** Of the same system, judged by a chance of running flat instead. */
    public static Laws of(SizedSystem system, List<Law> byChance) {
        List<Law> laws = new ArrayList<>(byChance);
        boolean daysToo = system.site().brief().target().autonomyDays().isPresent();
        laws.addAll(daysToo ? of(system).all : ofItsParts(system).all);
        return new Laws(laws);
    }

    /** Of its parts alone, however often it runs flat. */
    public static Laws ofItsParts(SizedSystem system) {
        List<Law> laws = new ArrayList<>(besideTheDays(system));
        boolean arrayGiven = system.site().brief().system().solarPowerW().isPresent();
        PartLaws.shortfalls(system).stream()
                .filter(shortfall -> !BY_DAYS.contains(shortfall.message().code()))
                .filter(shortfall -> arrayGiven
                        || !OF_THE_WORST_MONTH.contains(shortfall.message().code()))
                .forEach(shortfall -> breakLaw(laws, system, shortfall));
        return new Laws(laws);
    }

    private static List<Law> besideTheDays(SizedSystem system) {
        List<Law> laws = new ArrayList<>(of(
                        system.battery().bank(),
                        system.site().brief().system().bankRates(),
                        system.energyBudget(),
                        system.inverter(),
                        ChargingCurrents.of(system.chargers(), system.array()))
                .all);
        HookupLaw.find(system.site().journey()).ifPresent(laws::add);
        system.ac().flatMap(AcLaws::find).ifPresent(laws::add);
        TerminalLaw.find(system.graph()).ifPresent(laws::add);
        FuseOpensLaw.find(system).ifPresent(laws::add);
        system.chargers().alternator().ifPresent(charger -> laws.add(PartLaws.ofTheAlternator(charger)));
        laws.addAll(StringLaws.of(system));
        laws.addAll(PartLaws.ofItsRoom(system));
        system.loadWays().stream()
                .map(way -> Law.of(LawCode.VOLTAGE_DROP, way.dropPercent(), way.limitPercent()))
                .min(Comparator.comparingDouble(law -> law.margin().value()))
                .ifPresent(laws::add);
        laws.addAll(
                new CircuitLaws(system.circuits(), system.site().busVoltageV().value()).all());
        return laws;
    }

    /** A part's own shortfall takes the place of the law that it breaks, or stands beside the others. */
    private static void breakLaw(List<Law> laws, SizedSystem system, Shortfall shortfall) {
        LawCode code = PartLaws.brokenBy(system, shortfall);
        Law broken = Law.of(code, shortfall.needed(), shortfall.available()).broken(shortfall);
        for (int i = 0; i < laws.size(); i++) {
            if (laws.get(i).code() == code && laws.get(i).shortfall().isEmpty()) {
                laws.set(i, broken);
                return;
            }
        }
        laws.add(broken);
    }

    /** Of a bank with what its maker says of it, what draws on it and what charges it. */
    public static Laws of(
            BatteryBank bank,
            BankRates rates,
            EnergyBudget budget,
            Optional<InverterChoice> inverter,
            ChargingCurrents currents) {
        BankLimits limits = new BankLimits(bank, rates);
        List<Law> laws = new ArrayList<>(new DischargeLaws(bank, limits, budget).all());
        laws.add(new ChargeLaw(bank, limits, currents).law());
        inverter.ifPresent(chosen -> laws.addAll(PartLaws.ofTheInverter(chosen)));
        return new Laws(laws);
    }

    /** The same with what a trip's hookup is asked for. */
    public Laws on(Journey journey) {
        List<Law> laws = new ArrayList<>(all);
        HookupLaw.find(journey).ifPresent(laws::add);
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
