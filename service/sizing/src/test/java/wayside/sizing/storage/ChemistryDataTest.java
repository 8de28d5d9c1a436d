package wayside.sizing.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.trace.Basis;

/** The trade's figures, and that each chemistry has all of them. */
class ChemistryDataTest {
    // Common practice, no source: an AGM bank gives half its rated energy, an LFP bank nine tenths.
    @Test
    void anAgmBankGivesHalfAndAnLfpBankNineTenths() {
        assertThat(ChemistryData.of(Chemistry.AGM).usableShare().value()).isEqualTo(0.5);
        assertThat(ChemistryData.of(Chemistry.LFP).usableShare().value()).isEqualTo(0.9);
    }

    // Common practice, no source: two AGM of 1,800 Wh together offer 900 Wh, half of what 2,000 Wh rated of LFP give.
    @Test
    void twoAgmOfferHalfOfWhatAnLfpPackGives() {
        double agm = 1800 * ChemistryData.of(Chemistry.AGM).usableShare().value();
        double lfp = 2000 * ChemistryData.of(Chemistry.LFP).usableShare().value();
        assertThat(agm).isCloseTo(900, within(1e-9));
        assertThat(agm / lfp).isCloseTo(0.5, within(1e-9));
    }

    // Common practice, no source: an LFP pack for a 12 V bus is 12.8 V, a lead-acid battery has six cells of 2 V.
    @Test
    void packsHaveTheirRealVoltages() {
        assertThat(packVoltage(Chemistry.LFP, 12)).isCloseTo(12.8, within(1e-9));
        assertThat(packVoltage(Chemistry.LFP, 48)).isCloseTo(51.2, within(1e-9));
        assertThat(packVoltage(Chemistry.AGM, 24)).isCloseTo(24, within(1e-9));
    }

    private static double packVoltage(Chemistry chemistry, double bus) {
        ChemistryData data = ChemistryData.of(chemistry);
        return data.cellsInSeries(bus).value() * data.cellVoltageV().value();
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void everyChemistryIsComplete(Chemistry chemistry) {
        ChemistryData data = ChemistryData.of(chemistry);
        assertThat(data.chargeEfficiency().value()).isBetween(0.5, 1.0);
        assertThat(data.dischargeEfficiency().value()).isBetween(0.9, 1.0);
        assertThat(data.endOfLifeShare().value()).isBetween(0.5, 1.0);
        assertThat(data.chargeKnee().value()).isBetween(0.5, 0.99);
        assertThat(data.tailRate().value())
                .isLessThan(data.maximumChargeRate().low().value());
        assertThat(data.peukertExponent().value()).isBetween(1.0, 1.3);
        assertThat(data.ratedHours().value()).isBetween(1.0, 20.0);
        assertThat(data.selfDischargePerMonth().value()).isBetween(0.0, 0.2);
        assertThat(data.internalResistanceOhm().value()).isBetween(0.0005, 0.02);
        assertThat(data.lowestDischargeC().value())
                .isLessThanOrEqualTo(data.lowestChargeC().value());
        assertThat(data.highestChargeC().value())
                .isLessThanOrEqualTo(data.highestDischargeC().value());
        for (Range range : new Range[] {
            data.specificEnergyWhPerKg(),
            data.energyDensityWhPerL(),
            data.cycleLife(),
            data.maximumChargeRate(),
            data.chargeCellVoltageV()
        }) {
            assertThat(range.low().value()).isLessThanOrEqualTo(range.typical().value());
            assertThat(range.typical().value()).isLessThanOrEqualTo(range.high().value());
        }
    }

    @Test
    void noFigureClaimsAStandard() {
        assertThat(ChemistryData.of(Chemistry.GEL).usableShare().source().basis())
                .isEqualTo(Basis.COMMON_PRACTICE);
    }

    // Common practice, no source: LFP isn't charged below 0 C but may be discharged there.
    @Test
    void lfpIsNotChargedBelowFreezingButMayBeDischarged() {
        ChemistryData lfp = ChemistryData.of(Chemistry.LFP);
        assertThat(ChargeWindow.mayCharge(lfp, -0.1)).isFalse();
        assertThat(ChargeWindow.mayCharge(lfp, 0)).isTrue();
        assertThat(ChargeWindow.mayDischarge(lfp, -10)).isTrue();
        assertThat(ChargeWindow.mayDischarge(lfp, -21)).isFalse();
        assertThat(ChargeWindow.mayCharge(ChemistryData.of(Chemistry.AGM), -10)).isTrue();
    }
}
