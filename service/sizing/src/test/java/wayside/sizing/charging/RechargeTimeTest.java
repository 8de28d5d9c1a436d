package wayside.sizing.charging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankRates;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** Recharging against what people measure. */
class RechargeTimeTest {
    private static Derived given(double value, Unit unit) {
        return Derived.given("given", value, unit, "/test");
    }

    private static ChargerNeed bank(Chemistry chemistry, double nominalWh) {
        ChemistryData data = ChemistryData.of(chemistry);
        Derived voltage =
                given(data.cellsInSeries(12).value() * data.cellVoltageV().value(), Unit.VOLT);
        return ChargerNeed.of(
                "",
                data,
                given(nominalWh, Unit.WATT_HOUR),
                voltage,
                given(12, Unit.VOLT),
                given(1000, Unit.WATT_HOUR),
                BankRates.open(At.ROOT));
    }

    private static RechargeTime recharge(ChargerNeed bank, double from, double to, double... watts) {
        List<ChargingSource> sources = java.util.Arrays.stream(watts)
                .mapToObj(w -> new ChargingSource("source", given(w, Unit.WATT)))
                .toList();
        return RechargeTime.of(bank, sources, given(0, Unit.WATT), given(from, Unit.SHARE), given(to, Unit.SHARE));
    }

    // Common practice, no source: a pack of 2 kWh on 700 W of sun and 400 W of mains at once is full from empty in
    // about 2.5 h, not the 1.8 h of plain division. Of 700 W rated, a warm flat roof gives 0.67 in full sun.
    @Test
    void aPackOnSunAndMainsTakesLongerThanDivisionSays() {
        RechargeTime recharge = recharge(bank(Chemistry.LFP, 2000), 0, 1, 700 * 0.67, 400);
        assertThat(2000.0 / (700 + 400)).isCloseTo(1.8, within(0.05));
        assertThat(recharge.hours().value()).isCloseTo(2.5, within(0.25));
    }

    // Source: charger guidance, T90 = 1.2 Ah / I: 100 Ah at 20 A are 6 h to nine tenths (factor printed to two digits).
    @Test
    void agreesWithTheRuleForNineTenths() {
        ChargerNeed bank = bank(Chemistry.FLOODED, 1200);
        double watts = 20 * bank.chargingVoltageV().value();
        assertThat(recharge(bank, 0, 0.9, watts).hours().value()).isCloseTo(6, within(0.25));
    }

    // Source: a marine test author's measurement, flooded, 50 to 100 % at 0.15 C: 6.97 h, 2.1 times the
    // constant-current time alone. Where 100 % is was not said; one tenth.
    @Test
    void agreesWithAMeasuredRecharge() {
        ChargerNeed bank = bank(Chemistry.FLOODED, 1200);
        double watts = 15 * bank.chargingVoltageV().value();
        assertThat(recharge(bank, 0.5, 1, watts).hours().value()).isCloseTo(6.97, within(0.7));
    }

    // Source: battery maker's note on valve-regulated batteries: 60 % of the time brings 80 to 90 % of the charge.
    @Test
    void theLastFifthOfAnAgmTakesFarLongerThanAFifthOfTheTime() {
        ChargerNeed bank = bank(Chemistry.AGM, 1200);
        double watts = 20 * bank.chargingVoltageV().value();
        double all = recharge(bank, 0, 1, watts).hours().value();
        assertThat(recharge(bank, 0, 0.8, watts).hours().value()).isLessThan(0.6 * all);
        assertThat(recharge(bank, 0, 0.9, watts).hours().value()).isGreaterThan(0.55 * all);
    }

    @Test
    void theCurveBeginsAndEndsWhereItShould() {
        RechargeTime recharge = recharge(bank(Chemistry.LFP, 2000), 0.2, 1, 500);
        List<ChargePoint> curve = recharge.curve();
        assertThat(curve.get(0).stateOfCharge()).isEqualTo(0.2);
        assertThat(curve.get(0).powerW()).isCloseTo(500, within(1e-9));
        ChargePoint last = curve.get(curve.size() - 1);
        assertThat(last.hour()).isCloseTo(recharge.hours().value(), within(1e-9));
        assertThat(last.stateOfCharge()).isCloseTo(0.998, within(1e-9));
        assertThat(last.powerW()).isLessThan(100);
    }

    @Property
    void isAlwaysLongerThanPlainDivision(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0, max = 0.9) double from,
            @ForAll @DoubleRange(min = 1, max = 5000) double sourceW) {
        RechargeTime recharge = recharge(bank(chemistry, 2000), from, 1, sourceW);
        assertThat(recharge.hours().value())
                .isGreaterThan(recharge.plainDivisionHours().value());
    }

    @Property
    void everyWattHourIsAccountedFor(
            @ForAll Chemistry chemistry,
            @ForAll @DoubleRange(min = 0, max = 0.9) double from,
            @ForAll @DoubleRange(min = 1, max = 1000) double oneW,
            @ForAll @DoubleRange(min = 1, max = 1000) double otherW) {
        ChargerNeed bank = bank(chemistry, 2000);
        ChargingSource one = new ChargingSource("one", given(oneW, Unit.WATT));
        ChargingSource other = new ChargingSource("other", given(otherW, Unit.WATT));
        RechargeTime recharge = RechargeTime.of(
                bank, List.of(one, other), given(0, Unit.WATT), given(from, Unit.SHARE), given(0.95, Unit.SHARE));
        Derived hours = recharge.hours();
        double in = recharge.energyWh(one, hours).value()
                + recharge.energyWh(other, hours).value();
        double stored = (Math.min(0.95, 1) - from) * 2000;
        assertThat(in * bank.data().chargeEfficiency().value()).isCloseTo(stored, within(1e-6 * 2000));
    }
}
