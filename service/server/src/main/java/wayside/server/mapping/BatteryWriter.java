package wayside.server.mapping;

import java.util.ArrayList;
import java.util.List;
import wayside.server.api.BatteryView;
import wayside.server.api.ChemistryOptionView;
import wayside.server.api.TypicalRangeView;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.Range;
import wayside.sizing.system.SizedSystem;

/** The bank of a recommendation, and what other chemistries would take. */
final class BatteryWriter {
    private BatteryWriter() {}

    static BatteryView battery(SizedSystem system, Figures figures) {
        BatteryBank bank = system.battery().bank();
        return new BatteryView(
                bank.data().chemistry().code(),
                figures.at("/battery/busVoltageV", bank.busVoltageV()),
                figures.at("/battery/bankVoltageV", bank.bankVoltageV()),
                figures.at("/battery/usableEnergyWh", bank.usableEnergyWh()),
                figures.at("/battery/nominalEnergyWh", bank.nominalEnergyWh()),
                figures.at("/battery/nominalCapacityAh", bank.nominalCapacityAh()),
                figures.at("/battery/usableShare", bank.data().usableShare()),
                figures.at("/battery/coldUsableEnergyWh", bank.coldUsableEnergyWh()),
                figures.at("/battery/autonomyDays", bank.autonomyDays()),
                range("/battery/massKg", bank.massKg(), figures),
                range("/battery/volumeL", bank.volumeL(), figures),
                figures.at("/battery/lowestChargeC", bank.data().lowestChargeC()),
                figures.at("/battery/lowestDischargeC", bank.data().lowestDischargeC()),
                system.chargeLockedOutInCold(),
                figures.at("/battery/prospectiveShortCircuitA", system.prospectiveShortCircuitA()),
                system.ventilationCm2()
                        .map(area -> figures.at("/battery/ventilationOpeningCm2", area))
                        .orElse(null));
    }

    static List<ChemistryOptionView> byChemistry(List<BatteryBank> banks, Figures figures) {
        List<ChemistryOptionView> views = new ArrayList<>();
        for (BatteryBank bank : banks) {
            String at = "/byChemistry/" + views.size();
            views.add(new ChemistryOptionView(
                    bank.data().chemistry().code(),
                    figures.at(at + "/nominalEnergyWh", bank.nominalEnergyWh()),
                    figures.at(at + "/nominalCapacityAh", bank.nominalCapacityAh()),
                    figures.at(at + "/usableEnergyWh", bank.usableEnergyWh()),
                    range(at + "/massKg", bank.massKg(), figures),
                    range(at + "/volumeL", bank.volumeL(), figures),
                    figures.at(at + "/lowestChargeC", bank.data().lowestChargeC())));
        }
        return views;
    }

    private static TypicalRangeView range(String at, Range range, Figures figures) {
        return new TypicalRangeView(
                figures.at(at + "/low", range.low()),
                figures.at(at + "/typical", range.typical()),
                figures.at(at + "/high", range.high()));
    }
}
