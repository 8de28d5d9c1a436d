package wayside.sizing.endurance;

import java.util.Comparator;
import java.util.Optional;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.laws.ChargingCurrents;
import wayside.sizing.laws.Laws;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.BatteryNeed;
import wayside.sizing.system.BankDraw;
import wayside.sizing.system.InverterChoice;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What must hold between the parts of the system that is to last. */
final class EnduranceLaws {
    private final EnduranceQuestion question;
    private final BuiltSystem system;

    private EnduranceLaws(EnduranceQuestion question) {
        this.question = question;
        system = question.brief().system();
    }

    static Laws of(EnduranceQuestion question) {
        return new EnduranceLaws(question).laws();
    }

    private Laws laws() {
        EnergyBudget budget = question.journey().highestDemand().budget();
        BatteryBank bank = bank(budget);
        return Laws.of(bank, system.bankRates(), budget, InverterChoice.of(budget, bank), currents())
                .on(question.journey());
    }

    private BatteryBank bank(EnergyBudget budget) {
        BatteryNeed need = new BatteryNeed(
                budget.dailyTotalWh(),
                convention("days without any charge", 1, Unit.DAY),
                convention("room for loads to come", 0, Unit.SHARE),
                coldestBankC(),
                BankDraw.steadyW(budget),
                BankDraw.peakW(budget),
                question.journey().busVoltageV());
        return BatteryBank.of(question.data(), need, question.charger().nominalEnergyWh());
    }

    private Derived coldestBankC() {
        return question.journey().stays().stream()
                .map(stay -> stay.bank().meanC())
                .min(Comparator.comparingDouble(Derived::value))
                .orElseThrow();
    }

    private ChargingCurrents currents() {
        return ChargingCurrents.of(
                question.charger(),
                Optional.of(question.solarW()).filter(power -> power.value() > 0),
                given("alternator charger: rated output", system.alternatorA(), Unit.AMPERE, "alternatorChargerA"),
                given("shore charger: rated output", system.shoreW(), Unit.WATT, "shoreChargerW"));
    }

    private Optional<Derived> given(String label, double value, Unit unit, String field) {
        return value > 0 ? Optional.of(Derived.given(label, value, unit, system.at(field))) : Optional.empty();
    }

    private static Derived convention(String label, double value, Unit unit) {
        return Derived.convention(label, value, unit, "The system stands as it is", Source.definition());
    }
}
