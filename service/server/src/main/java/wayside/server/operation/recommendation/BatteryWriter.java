package wayside.server.operation.recommendation;

import java.util.ArrayList;
import java.util.List;
import wayside.server.answer.Figures;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.Range;
import wayside.sizing.system.BankChoice;
import wayside.sizing.system.BuyableBank;
import wayside.sizing.system.SizedSystem;

/** The bank of a recommendation, and what other chemistries would take. */
final class BatteryWriter {
    private BatteryWriter() {}

    static BatteryView battery(SizedSystem system, Figures figures) {
        BatteryBank bank = system.battery().bank();
        return new BatteryView(
                bank.data().chemistry().code(),
                figures.at("busVoltageV", bank.busVoltageV()),
                figures.at("bankVoltageV", bank.bankVoltageV()),
                figures.at("usableEnergyWh", bank.usableEnergyWh()),
                figures.at("nominalEnergyWh", bank.nominalEnergyWh()),
                figures.at("nominalCapacityAh", bank.nominalCapacityAh()),
                figures.at("usableShare", bank.data().usableShare()),
                figures.at("coldUsableEnergyWh", bank.coldUsableEnergyWh()),
                figures.at("autonomyDays", bank.autonomyDays()),
                range(bank.massKg(), figures.in("massKg")),
                range(bank.volumeL(), figures.in("volumeL")),
                needed(system.battery(), figures.in("needed")),
                system.battery()
                        .buyable()
                        .map(batteries -> buyable(batteries, figures.in("buyable")))
                        .orElse(null),
                figures.at("lowestChargeC", bank.data().lowestChargeC()),
                figures.at("lowestDischargeC", bank.data().lowestDischargeC()),
                system.site().journey().place().compartment().code(),
                system.chargeLockedOutInCold(),
                figures.at("prospectiveShortCircuitA", system.prospectiveShortCircuitA()),
                system.ventilationCm2()
                        .map(area -> figures.at("ventilationOpeningCm2", area))
                        .orElse(null));
    }

    private static BankNeedView needed(BankChoice battery, Figures figures) {
        return new BankNeedView(
                figures.at("energyWh", battery.neededWh()), figures.at("capacityAh", battery.neededAh()));
    }

    private static BuyableBankView buyable(BuyableBank batteries, Figures figures) {
        return new BuyableBankView(
                (int) figures.at("count", batteries.count()),
                (int) figures.at("seriesCount", batteries.seriesCount()),
                (int) figures.at("parallelCount", batteries.parallelCount()),
                figures.at("voltageV", batteries.voltageV()),
                figures.at("capacityAh", batteries.capacityAh()),
                figures.at("lengthMm", batteries.lengthMm()),
                figures.at("widthMm", batteries.widthMm()),
                figures.at("heightMm", batteries.heightMm()));
    }

    static List<ChemistryOptionView> byChemistry(List<BatteryBank> banks, Figures figures) {
        List<ChemistryOptionView> views = new ArrayList<>();
        for (BatteryBank bank : banks) {
            Figures here = figures.entry(views.size());
            views.add(new ChemistryOptionView(
                    bank.data().chemistry().code(),
                    here.at("nominalEnergyWh", bank.nominalEnergyWh()),
                    here.at("nominalCapacityAh", bank.nominalCapacityAh()),
                    here.at("usableEnergyWh", bank.usableEnergyWh()),
                    range(bank.massKg(), here.in("massKg")),
                    range(bank.volumeL(), here.in("volumeL")),
                    here.at("lowestChargeC", bank.data().lowestChargeC())));
        }
        return views;
    }

    private static TypicalRangeView range(Range range, Figures figures) {
        return new TypicalRangeView(
                figures.at("low", range.low()),
                figures.at("typical", range.typical()),
                figures.at("high", range.high()));
    }
}
