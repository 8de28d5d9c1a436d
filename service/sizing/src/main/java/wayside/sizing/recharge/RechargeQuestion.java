package wayside.sizing.recharge;

import java.util.List;
import java.util.OptionalDouble;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.RechargeBrief;
import wayside.sizing.charging.ChargerNeed;
import wayside.sizing.charging.ChargingSource;
import wayside.sizing.charging.RechargeTime;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The question in figures.
 *
 * @param ambientC air around the bank [C]
 * @param bank what it takes and at which voltage
 * @param sources that run
 * @param time that they need together
 */
public record RechargeQuestion(
        RechargeBrief brief, Derived ambientC, ChargerNeed bank, List<ChargingSource> sources, RechargeTime time) {
    private static final double AMBIENT_C = 20;

    public RechargeQuestion {
        sources = List.copyOf(sources);
    }

    public static RechargeQuestion of(RechargeBrief brief) {
        Derived ambient = figure(
                brief.ambientC(), "air temperature", AMBIENT_C, Unit.CELSIUS, brief.at("ambientC"), "A mild day");
        ChargerNeed bank = bank(brief.system());
        List<ChargingSource> sources = RechargeSources.of(brief, bank, ambient);
        return new RechargeQuestion(brief, ambient, bank, sources, time(brief, bank, sources));
    }

    private static ChargerNeed bank(BuiltSystem system) {
        ChemistryData data = ChemistryData.of(system.chemistry());
        Derived bus = Derived.given("nominal bus voltage", system.busVoltageV(), Unit.VOLT, system.at("busVoltageV"));
        Derived nominal = Derived.given(
                "rated energy of the bank", system.nominalEnergyWh(), Unit.WATT_HOUR, system.at("nominalEnergyWh"));
        return ChargerNeed.of("", data, nominal, BatteryBank.bankVoltage(data, bus), bus, nominal, system.bankRates());
    }

    private static RechargeTime time(RechargeBrief brief, ChargerNeed bank, List<ChargingSource> sources) {
        return RechargeTime.of(
                bank,
                sources,
                figure(
                        brief.loadW(),
                        "loads while charging",
                        0,
                        Unit.WATT,
                        brief.at("loadW"),
                        "Nothing runs meanwhile"),
                figure(
                        brief.fromStateOfCharge(),
                        "state of charge at the start",
                        0,
                        Unit.SHARE,
                        brief.at("fromStateOfCharge"),
                        "From empty"),
                figure(
                        brief.toStateOfCharge(),
                        "state of charge wanted",
                        1,
                        Unit.SHARE,
                        brief.at("toStateOfCharge"),
                        "Full"));
    }

    private static Derived figure(
            OptionalDouble given, String label, double usual, Unit unit, String field, String reason) {
        return Derived.byDefault(label, usual, unit, field, reason, Source.commonPractice())
                .unlessGiven(given);
    }
}
