package wayside.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.wiring.SizedCircuit;

/**
 * A whole system. One that does not fit the question is here too, with its shortfalls: they say what is missing.
 *
 * @param shortfalls empty when it fits
 * @param energyBudget of the stay whose day takes most
 * @param battery the bank and its alternatives
 * @param chargeLockedOutInCold whether mornings of the trip are too cold for the bank to be charged
 * @param prospectiveShortCircuitA at the bank's terminals [A]
 * @param ventilationCm2 free area of each of two openings, for lead-acid [cm2]
 * @param arrayNeed by stay
 * @param array none when nothing is left for the sun, or no sun is to be had
 * @param chargers alternator and shore
 * @param inverter none without AC loads
 * @param circuits battery first, then outward
 * @param byChance how bank and array were found, when a chance of running flat was accepted
 */
public record Recommendation(
        List<Shortfall> shortfalls,
        EnergyBudget energyBudget,
        BankChoice battery,
        boolean chargeLockedOutInCold,
        Derived prospectiveShortCircuitA,
        Optional<Derived> ventilationCm2,
        PowerUnit powerUnit,
        ArrayNeed arrayNeed,
        Optional<ArrayChoice> array,
        Chargers chargers,
        Optional<InverterChoice> inverter,
        List<SizedCircuit> circuits,
        RuleOfThumb ruleOfThumb,
        Optional<ByChance> byChance) {
    public Recommendation {
        shortfalls = List.copyOf(shortfalls);
        circuits = List.copyOf(circuits);
    }

    public boolean feasible() {
        return shortfalls.isEmpty();
    }

    /** The same system with what was found of its chance. */
    Recommendation with(ByChance found, List<Shortfall> newShortfalls) {
        return new Recommendation(
                newShortfalls,
                energyBudget,
                battery,
                chargeLockedOutInCold,
                prospectiveShortCircuitA,
                ventilationCm2,
                powerUnit,
                arrayNeed,
                array,
                chargers,
                inverter,
                circuits,
                ruleOfThumb,
                Optional.of(found));
    }

    /** Every traced value, in reading order. */
    List<Derived> figures() {
        List<Derived> figures = new ArrayList<>(EnergyBudgetSizer.figures(energyBudget));
        figures.add(battery.bank().busVoltageV());
        figures.addAll(battery.bank().figures());
        figures.add(battery.neededWh());
        figures.add(prospectiveShortCircuitA);
        ventilationCm2.ifPresent(figures::add);
        addSolar(figures);
        addChargers(figures);
        inverter.ifPresent(i -> figures.addAll(List.of(
                i.rating().requiredW(),
                i.rating().continuousW(),
                i.rating().surgeW(),
                i.idleW(),
                i.batteryCurrentA())));
        circuits.forEach(circuit -> figures.addAll(circuit.figures()));
        battery.byChemistry().forEach(bank -> figures.addAll(bank.figures()));
        figures.add(powerUnit.outletCurrentLimitA());
        figures.add(ruleOfThumb.nominalEnergyWh());
        ruleOfThumb.solarPowerW().ifPresent(figures::add);
        figures.add(ruleOfThumb.autonomyDays());
        byChance.ifPresent(found -> figures.addAll(found.figures()));
        shortfalls.forEach(s -> figures.addAll(List.of(s.needed(), s.available())));
        return figures;
    }

    private void addSolar(List<Derived> figures) {
        array.ifPresent(a -> {
            figures.addAll(List.of(a.powerW(), a.areaM2(), a.controllerCurrentA()));
            ArrayStrings strings = a.strings();
            figures.addAll(List.of(
                    strings.controllerMaximumV(),
                    strings.seriesCount(),
                    strings.parallelCount(),
                    strings.coldOpenCircuitV(),
                    strings.hotWorkingV()));
            figures.addAll(a.yieldsWh());
        });
        for (StayBalance balance : arrayNeed.balances()) {
            figures.addAll(List.of(
                    balance.stay().month().horizontalKwhM2(),
                    balance.stay().month().planeKwhM2(),
                    balance.stay().month().yieldWhPerW(),
                    balance.needWh(),
                    balance.arrayW()));
        }
    }

    private void addChargers(List<Derived> figures) {
        chargers.alternator().ifPresent(a -> figures.addAll(List.of(a.chargerCurrentA(), a.chargerPowerW())));
        chargers.alternatorWh().ifPresent(figures::add);
        chargers.alternatorHoursToFull().ifPresent(figures::add);
        chargers.shore().ifPresent(s -> figures.addAll(List.of(s.chargerPowerW(), s.mainsPowerW())));
        chargers.shoreWh().ifPresent(figures::add);
        chargers.shoreHoursToFull().ifPresent(figures::add);
    }
}
