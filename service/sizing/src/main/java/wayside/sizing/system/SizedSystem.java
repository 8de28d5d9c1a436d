package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.BankRates;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.Ventilation;
import wayside.sizing.system.graph.SystemGraph;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;
import wayside.sizing.wiring.BankFault;
import wayside.sizing.wiring.FaultCurrent;
import wayside.sizing.wiring.RuleSets;
import wayside.sizing.wiring.SizedCircuit;

/**
 * A whole system, from the load list to cables and fuses. Whether it holds together is for its laws to say.
 *
 * @param site the question
 * @param battery the bank and its alternatives
 * @param prospectiveShortCircuitA at the bank's main fuse [A]
 * @param ventilationCm2 free area of each of two openings, for lead-acid [cm2]
 * @param arrayNeed by stay
 * @param array none when nothing is left for the sun, or no sun is to be had
 * @param catchUps by stay, how an empty bank gets full again; none without an array
 * @param chargers alternator and shore
 * @param inverter none without AC loads
 * @param converter none where the DC loads take the voltage of the bus
 * @param graph its parts and the cables between them
 * @param ac its mains side; none without hookup and inverter
 * @param mass of the whole
 */
public record SizedSystem(
        Site site,
        BankChoice battery,
        Derived prospectiveShortCircuitA,
        Optional<Derived> ventilationCm2,
        PowerUnit powerUnit,
        ArrayNeed arrayNeed,
        Optional<ArrayChoice> array,
        List<CatchUp> catchUps,
        Chargers chargers,
        Optional<InverterChoice> inverter,
        Optional<ConverterChoice> converter,
        SystemGraph graph,
        Optional<AcSide> ac,
        SystemMass mass,
        RuleOfThumb ruleOfThumb) {
    public SizedSystem {
        catchUps = List.copyOf(catchUps);
    }

    /**
     * Sizes around a bank and an array: what is left open, days of autonomy and the trip's worst month decide.
     *
     * @param pair what is already found; what the brief itself gives goes before it
     */
    public static SizedSystem of(Site site, SizePair pair) {
        EnergyBudget budget = site.journey().highestDemand().budget();
        BankChoice battery = BankChoice.of(site, pair);
        BatteryBank bank = battery.bank();
        Chargers chargers = Chargers.of(site, bank, pair.engineChargerA());
        ArrayNeed arrayNeed = ArrayNeed.of(site, chargers);
        Optional<ArrayChoice> array = ArrayChoice.of(site, bank, arrayNeed, pair);
        Optional<InverterChoice> inverter = InverterChoice.of(budget, bank);
        Optional<ConverterChoice> converter = ConverterChoice.of(site, budget);
        SystemMass mass = SystemMass.of(site, battery, array, chargers, inverter, converter);
        FaultCurrent fault = bankFault(bank, site.brief().system().bankRates());
        Optional<AcSide> ac = AcSide.find(site, chargers, inverter);
        SystemGraph graph = MainCircuits.of(site, battery, fault, inverter, converter, array, chargers, ac);
        return new SizedSystem(
                site,
                battery,
                fault.amperes(),
                ventilation(bank),
                PowerUnit.of(site, battery, inverter, array, chargers),
                arrayNeed,
                array,
                array.map(sun -> catchUps(site, bank, chargers, sun)).orElse(List.of()),
                chargers,
                inverter,
                converter,
                graph,
                ac,
                mass,
                RuleOfThumb.of(site));
    }

    private static List<CatchUp> catchUps(Site site, BatteryBank bank, Chargers chargers, ArrayChoice array) {
        List<CatchUp> catchUps = new ArrayList<>();
        for (JourneyStay stay : site.journey().stays()) {
            catchUps.add(CatchUp.of(site, stay, bank, chargers, array.yieldsWh().get(stay.index())));
        }
        return catchUps;
    }

    /** The maker's figure wins over our estimate. */
    private static FaultCurrent bankFault(BatteryBank bank, BankRates rates) {
        String label = "bank: prospective short-circuit current";
        Derived amperes = rates.shortCircuitA().isPresent()
                ? Derived.given(label, rates.shortCircuitA().getAsDouble(), Unit.AMPERE, rates.at("shortCircuitA"))
                : BankFault.currentA(
                        label,
                        bank.data().chemistry(),
                        bank.busVoltageV(),
                        bank.nominalCapacityAh(),
                        Optional.empty(),
                        Optional.of(rates.at("shortCircuitA")));
        return new FaultCurrent(
                bank.bankVoltageV(), amperes, rates.shortCircuitA().isEmpty());
    }

    private static Optional<Derived> ventilation(BatteryBank bank) {
        return bank.data().chemistry().isLeadAcid()
                ? Optional.of(Ventilation.openingCm2(
                        bank.data(),
                        bank.data().cellsInSeries(bank.busVoltageV().value()),
                        bank.nominalCapacityAh()))
                : Optional.empty();
    }

    /** What the cables carry, battery first, then outward. */
    public List<SizedCircuit> circuits() {
        return graph.circuits();
    }

    /** What the bank gives or takes for hours, the larger [A]; 0 where nothing hangs on it. */
    public double mainCurrentA() {
        return circuits().stream()
                .filter(circuit -> circuit.duty().name().equals(MainCircuits.MAIN_NAME))
                .mapToDouble(circuit -> circuit.duty().currentA().value())
                .max()
                .orElse(0);
    }

    /** The highest that the bank is charged with [V]. */
    public Derived chargingVoltageV() {
        return ArrayStrings.chargingV(site);
    }

    /** The ways from the bank to the loads. */
    public List<LoadWay> loadWays() {
        return LoadWay.all(
                graph, CircuitDefaults.of(site.brief().system().rules()).dropLimitPercent());
    }

    /** Of the stay whose day takes most. */
    public EnergyBudget energyBudget() {
        return site.journey().highestDemand().budget();
    }

    /** Whether mornings of the trip are too cold for the bank to be charged. */
    public boolean chargeLockedOutInCold() {
        return site.journey().coldest().bank().coldestC()
                < battery.bank().data().lowestChargeC().value();
    }

    /** Defaults that are no numbers. */
    public List<Assumption> choices() {
        List<Assumption> choices = new ArrayList<>(energyBudget().choices());
        choices.addAll(site.choices());
        if (site.brief().system().rules().isEmpty()) {
            choices.add(CircuitDefaults.choice(site.brief().system(), RuleSets.DEFAULT));
        }
        circuits().forEach(circuit -> choices.addAll(circuit.duty().choices()));
        return choices;
    }

    /** What whoever builds it must know. */
    public List<Caution> cautions() {
        return SystemCautions.of(this);
    }
}
