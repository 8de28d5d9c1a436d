package wayside.sizing.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import wayside.sizing.Briefs;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankRates;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** Chargers between alternator, mains and bank. */
class ChargersTest {
    private static ChargerNeed bank(Chemistry chemistry, double nominalWh, double dailyWh) {
        ChemistryData data = ChemistryData.of(chemistry);
        Derived bus = Derived.given("bus", 12, Unit.VOLT, "/test");
        return ChargerNeed.of(
                "",
                data,
                Derived.given("energy", nominalWh, Unit.WATT_HOUR, "/test"),
                BatteryBank.bankVoltage(data, bus),
                bus,
                Derived.given("daily", dailyWh, Unit.WATT_HOUR, "/test"),
                BankRates.open(At.ROOT));
    }

    private static AlternatorCharger alternator(ChargerNeed need, double hours, OptionalDouble ratingA) {
        return AlternatorCharger.find(
                        need,
                        Derived.given("driving", hours, Unit.HOUR, "/test"),
                        Briefs.charging(OptionalDouble.empty(), ratingA),
                        Optional.empty())
                .orElseThrow();
    }

    // Common practice, no source: a charger of about half the alternator's label, 50 A on an alternator of 120 A.
    @Test
    void takesAboutHalfTheAlternator() {
        AlternatorCharger charger = alternator(bank(Chemistry.LFP, 5000, 5000), 1, OptionalDouble.of(120));
        assertThat(charger.chargerCurrentA().value()).isEqualTo(50);
        assertThat(charger.inputCurrentA().value()).isLessThanOrEqualTo(60);
    }

    // Source: a van owner's log: a 50 A charger gave 685 W at full output.
    @Test
    void fiftyAmperesAreWhatAnOwnerLogged() {
        AlternatorCharger charger = alternator(bank(Chemistry.LFP, 5000, 5000), 1, OptionalDouble.of(120));
        assertThat(charger.chargerPowerW().value()).isCloseTo(685, within(10.0));
    }

    @Test
    void aSmallNeedGetsASmallCharger() {
        assertThat(alternator(bank(Chemistry.LFP, 2560, 500), 3, OptionalDouble.empty())
                        .chargerCurrentA()
                        .value())
                .isEqualTo(18);
    }

    @Test
    void aShoreChargerFillsABankOvernight() {
        ShoreCharger charger = ShoreCharger.of(
                bank(Chemistry.LFP, 2560, 500),
                Derived.given("hookup", 12, Unit.HOUR, "/test"),
                SystemWishes.open(At.ROOT),
                Optional.empty());
        assertThat(charger.chargerPowerW().value() * 10).isGreaterThanOrEqualTo(2560);
        assertThat(charger.mainsPowerW().value())
                .isGreaterThan(charger.chargerPowerW().value());
    }

    @Property
    void neverPutsInMoreThanTheBankTakes(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 300, max = 20000) double nominalWh,
            @ForAll @DoubleRange(min = 0.1, max = 24) double hours,
            @ForAll @DoubleRange(min = 1, max = 400) double chargerA) {
        ChargerNeed need = bank(chemistry, nominalWh, 1000);
        AlternatorCharger charger = AlternatorCharger.find(
                        need,
                        Derived.given("driving", hours, Unit.HOUR, "/test"),
                        Briefs.charging(OptionalDouble.of(chargerA), OptionalDouble.empty()),
                        Optional.empty())
                .orElseThrow();
        assertThat(charger.energyPerDayWh("trip", Derived.given("driving", hours, Unit.HOUR, "/test"))
                        .value())
                .isLessThanOrEqualTo(need.acceptedW().value() * hours + 1e-6);
    }
}
