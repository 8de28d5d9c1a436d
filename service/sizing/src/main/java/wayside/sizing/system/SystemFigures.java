package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.trace.Derived;

/** The traced values of a system in reading order. */
final class SystemFigures {
    private final SizedSystem system;
    private final List<Derived> figures = new ArrayList<>();

    SystemFigures(SizedSystem system) {
        this.system = system;
    }

    List<Derived> all() {
        addBudgetAndBank();
        system.array().ifPresent(this::addArray);
        system.catchUps().forEach(this::addCatchUp);
        addStays();
        addChargers(system.chargers());
        system.inverter().ifPresent(this::addInverter);
        system.circuits().forEach(circuit -> figures.addAll(circuit.figures()));
        system.battery().byChemistry().forEach(bank -> figures.addAll(bank.figures()));
        figures.add(system.powerUnit().outletCurrentLimitA());
        addRuleOfThumb(system.ruleOfThumb());
        return List.copyOf(figures);
    }

    private void addBudgetAndBank() {
        figures.addAll(system.energyBudget().figures());
        figures.add(system.battery().bank().busVoltageV());
        figures.addAll(system.battery().bank().figures());
        figures.add(system.battery().neededWh());
        figures.add(system.prospectiveShortCircuitA());
        system.ventilationCm2().ifPresent(figures::add);
    }

    private void addArray(ArrayChoice array) {
        figures.addAll(
                List.of(array.powerW(), array.areaM2(), array.controllers().count()));
        figures.addAll(
                List.of(array.controllers().stringCount(), array.controllers().ratedA()));
        ArrayStrings strings = array.strings();
        figures.addAll(List.of(
                strings.controllerMaximumV(),
                strings.modulePowerW(),
                strings.seriesCount(),
                strings.parallelCount(),
                strings.coldOpenCircuitV(),
                strings.hotWorkingV(),
                array.stringFuses().othersA(),
                array.stringFuses().limitA()));
        figures.addAll(array.yieldsWh());
    }

    private void addStays() {
        for (StayBalance balance : system.arrayNeed().balances()) {
            figures.addAll(List.of(
                    balance.stay().month().horizontalKwhM2(),
                    balance.stay().month().planeKwhM2(),
                    balance.stay().month().yieldWhPerW(),
                    balance.needWh(),
                    balance.arrayW()));
        }
    }

    private void addCatchUp(CatchUp catchUp) {
        figures.add(catchUp.overWh());
        catchUp.days().ifPresent(figures::add);
    }

    private void addChargers(Chargers chargers) {
        chargers.alternator()
                .ifPresent(a -> figures.addAll(List.of(a.chargerCurrentA(), a.limitA(), a.chargerPowerW())));
        chargers.alternatorWh().ifPresent(figures::add);
        chargers.alternatorHoursToFull().ifPresent(figures::add);
        chargers.shore().ifPresent(s -> figures.addAll(List.of(s.chargerPowerW(), s.mainsPowerW())));
        chargers.shoreWh().ifPresent(figures::add);
        chargers.shoreHoursToFull().ifPresent(figures::add);
    }

    private void addInverter(InverterChoice inverter) {
        figures.addAll(List.of(
                inverter.rating().requiredW(),
                inverter.rating().continuousW(),
                inverter.rating().surgeW(),
                inverter.idleW(),
                inverter.batteryCurrentA()));
    }

    private void addRuleOfThumb(RuleOfThumb thumb) {
        figures.add(thumb.nominalEnergyWh());
        thumb.solarPowerW().ifPresent(figures::add);
        figures.add(thumb.autonomyDays());
    }
}
