package wayside.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.ShortCircuit;
import wayside.sizing.storage.Ventilation;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.wiring.RuleSets;
import wayside.sizing.wiring.SizedCircuit;

/**
 * The whole system, from the load list to cables and fuses: days of autonomy make the bank, the trip's worst month makes the
 * array. Where a chance of running flat is accepted, the pair of bank and array is found by it and built into a system by the
 * same line.
 */
public final class SystemSizer {
    private SystemSizer() {}

    /** Sizes by the accepted chance of running flat when there is one, else by days of autonomy and the worst month. */
    public static Answer<Recommendation> size(SystemBrief brief) {
        Answer<Recommendation> plain = size(brief, SizePair.OPEN);
        if (brief.target().chanceOfRunningFlat().isEmpty()) {
            return plain;
        }
        double accepted = brief.target().chanceOfRunningFlat().getAsDouble();
        ByChance found = ChanceSizer.of(Site.of(brief), plain.result(), accepted);
        return ChanceAnswer.of(brief, size(brief, found.pair()), found);
    }

    /**
     * Sizes around a bank and an array.
     *
     * @param pair what is already found; what the brief itself gives goes before it
     */
    static Answer<Recommendation> size(SystemBrief brief, SizePair pair) {
        Site site = Site.of(brief);
        EnergyBudget budget = site.thirstiest().budget();
        BankChoice battery = BankChoice.of(site, pair.nominalEnergyWh());
        Chargers chargers = Chargers.of(site, battery.bank());
        ArrayNeed arrayNeed = ArrayNeed.of(site, chargers);
        Optional<ArrayChoice> array = ArrayChoice.of(site, battery.bank(), arrayNeed, pair.solarPowerW());
        Optional<InverterChoice> inverter = InverterChoice.of(budget, battery.bank());
        List<SizedCircuit> circuits = MainCircuits.of(site, battery.bank(), inverter, array, chargers);
        Recommendation system = new Recommendation(
                shortfalls(site, battery, arrayNeed, inverter, circuits),
                budget,
                battery,
                site.coldest().coldestMorningC()
                        < battery.bank().data().lowestChargeC().value(),
                shortCircuit(battery.bank()),
                ventilation(battery.bank()),
                PowerUnit.of(budget, battery, inverter, array, chargers),
                arrayNeed,
                array,
                chargers,
                inverter,
                circuits,
                RuleOfThumb.of(site),
                Optional.empty());
        return new Answer<>(system, system.figures(), choices(site, circuits), SystemCautions.of(site, system));
    }

    private static List<Shortfall> shortfalls(
            Site site,
            BankChoice battery,
            ArrayNeed arrayNeed,
            Optional<InverterChoice> inverter,
            List<SizedCircuit> circuits) {
        List<Shortfall> shortfalls = new ArrayList<>();
        battery.shortfall(site).ifPresent(shortfalls::add);
        ArrayChoice.shortfall(site, arrayNeed).ifPresent(shortfalls::add);
        inverter.flatMap(InverterChoice::shortfall).ifPresent(shortfalls::add);
        for (SizedCircuit circuit : circuits) {
            if (circuit instanceof SizedCircuit.NotFeasible failed) {
                shortfalls.add(new Shortfall(
                        failed.shortfall().code(),
                        failed.shortfall().text() + higherVoltage(site),
                        failed.shortfall().needed(),
                        failed.shortfall().available()));
            }
        }
        return shortfalls;
    }

    private static String higherVoltage(Site site) {
        return site.busVoltageV().value() < 48
                ? String.format(
                        Locale.ROOT,
                        " A bus of %.0f V halves the current.",
                        2 * site.busVoltageV().value())
                : "";
    }

    private static Derived shortCircuit(BatteryBank bank) {
        return ShortCircuit.currentA(bank.data(), bank.bankVoltageV(), bank.nominalCapacityAh());
    }

    private static Optional<Derived> ventilation(BatteryBank bank) {
        return bank.data().chemistry().isLeadAcid()
                ? Optional.of(Ventilation.openingCm2(
                        bank.data(),
                        bank.data().cellsInSeries(bank.busVoltageV().value()),
                        bank.nominalCapacityAh()))
                : Optional.empty();
    }

    private static List<Assumption> choices(Site site, List<SizedCircuit> circuits) {
        List<Assumption> choices = new ArrayList<>(site.choices());
        if (site.brief().system().rules().isEmpty()) {
            choices.add(CircuitDefaults.choice(RuleSets.DEFAULT));
        }
        circuits.forEach(circuit -> choices.addAll(circuit.duty().choices()));
        return choices;
    }
}
