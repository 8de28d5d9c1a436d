package wayside.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.RechargeBrief;
import wayside.sizing.charging.ChargerNeed;
import wayside.sizing.charging.ChargingSource;
import wayside.sizing.charging.RechargeTime;
import wayside.sizing.recharge.Recharge;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.ChargeWindow;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Answer;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** How long a recharge takes, with all sources at once, against what the battery accepts. */
public final class RechargeSizer {
    private static final double AMBIENT_C = 20;

    private RechargeSizer() {}

    /** @param brief whose start lies below its end */
    public static Answer<Recharge> size(RechargeBrief brief) {
        Derived ambient =
                figure(brief.ambientC(), "air temperature", AMBIENT_C, Unit.CELSIUS, "/ambientC", "A mild day");
        ChargerNeed bank = bank(brief.system());
        List<ChargingSource> sources = RechargeSources.of(brief, bank, ambient);
        RechargeTime time = RechargeTime.of(
                bank,
                sources,
                figure(brief.loadW(), "loads while charging", 0, Unit.WATT, "/loadW", "Nothing runs meanwhile"),
                figure(
                        brief.fromStateOfCharge(),
                        "state of charge at the start",
                        0,
                        Unit.SHARE,
                        "/fromStateOfCharge",
                        "From empty"),
                figure(brief.toStateOfCharge(), "state of charge wanted", 1, Unit.SHARE, "/toStateOfCharge", "Full"));
        List<Shortfall> shortfalls = shortfalls(bank, time, ambient);
        Recharge recharge = shortfalls.isEmpty() ? ended(bank, sources, time) : endless(bank, time, shortfalls);
        return new Answer<>(recharge, figures(recharge), List.of(), cautions(brief.system(), bank.data()));
    }

    private static ChargerNeed bank(BuiltSystem system) {
        ChemistryData data = ChemistryData.of(system.chemistry());
        Derived bus = Derived.given("nominal bus voltage", system.busVoltageV(), Unit.VOLT, "/system/busVoltageV");
        Derived nominal = Derived.given(
                "rated energy of the bank", system.nominalEnergyWh(), Unit.WATT_HOUR, "/system/nominalEnergyWh");
        return ChargerNeed.of(data, nominal, BatteryBank.bankVoltage(data, bus), bus, nominal);
    }

    private static Recharge ended(ChargerNeed bank, List<ChargingSource> sources, RechargeTime time) {
        Derived hours = time.hours();
        List<Recharge.Share> shares = new ArrayList<>();
        for (ChargingSource source : sources) {
            shares.add(new Recharge.Share(source.name(), source.powerW(), time.energyWh(source, hours)));
        }
        return new Recharge(
                List.of(),
                time.sourceW(),
                bank.acceptedW(),
                Optional.of(hours),
                Optional.of(time.plainDivisionHours()),
                time.curve(),
                shares);
    }

    private static Recharge endless(ChargerNeed bank, RechargeTime time, List<Shortfall> shortfalls) {
        return new Recharge(
                shortfalls, time.sourceW(), bank.acceptedW(), Optional.empty(), Optional.empty(), List.of(), List.of());
    }

    private static List<Shortfall> shortfalls(ChargerNeed bank, RechargeTime time, Derived ambient) {
        List<Shortfall> shortfalls = new ArrayList<>();
        if (!ChargeWindow.mayCharge(bank.data(), ambient.value())) {
            boolean cold = ambient.value() < bank.data().lowestChargeC().value();
            shortfalls.add(new Shortfall(
                    cold ? "too-cold-to-charge" : "too-hot-to-charge",
                    cold
                            ? "This battery takes no charge while it is so cold. Warm it first; it may be discharged."
                            : "This battery takes no charge while it is so hot. Shade and air it first.",
                    cold ? bank.data().lowestChargeC() : bank.data().highestChargeC(),
                    ambient));
        }
        if (time.sourceW().value() <= 0) {
            Derived some = Derived.computed(
                    "power that a charge needs",
                    1,
                    Unit.WATT,
                    Formula.definition("more than nothing is left for the battery"));
            shortfalls.add(new Shortfall(
                    "no-power",
                    "Nothing is left for the battery: no source runs, or the loads take all of it.",
                    some,
                    time.sourceW()));
        }
        return shortfalls;
    }

    private static List<Derived> figures(Recharge recharge) {
        List<Derived> figures = new ArrayList<>(List.of(recharge.powerW(), recharge.acceptedW()));
        recharge.hours().ifPresent(figures::add);
        recharge.plainDivisionHours().ifPresent(figures::add);
        recharge.shares().forEach(share -> figures.addAll(List.of(share.powerW(), share.energyWh())));
        recharge.shortfalls().forEach(s -> figures.addAll(List.of(s.needed(), s.available())));
        return figures;
    }

    private static List<Caution> cautions(BuiltSystem system, ChemistryData data) {
        List<Caution> cautions = new ArrayList<>();
        if (data.chemistry().isLeadAcid()) {
            cautions.add(new Caution(
                    "lead-acid-ventilation",
                    Severity.DANGER,
                    "A lead-acid battery gives off hydrogen while it charges: vent its box to the outside and keep sparks"
                            + " away.",
                    Source.commonPractice()));
            cautions.add(new Caution(
                    "partial-recharge",
                    Severity.NOTE,
                    "The last fifth takes most of the time. A lead-acid battery that never gets it wears out early.",
                    Source.commonPractice()));
        } else {
            cautions.add(new Caution(
                    "cold-charging",
                    Severity.WARNING,
                    "A lithium battery charged below 0 C (32 F) is damaged for good. Its electronics must stop that.",
                    Source.commonPractice()));
        }
        if (system.alternatorChargerA() > 0) {
            cautions.add(new Caution(
                    "alternator-heat",
                    Severity.WARNING,
                    "The alternator must stand this current hot and at idle: about half its label. Use a charger that limits"
                            + " it.",
                    Source.commonPractice()));
        }
        return cautions;
    }

    private static Derived figure(
            OptionalDouble given, String label, double usual, Unit unit, String path, String reason) {
        return given.isPresent()
                ? Derived.given(label, given.getAsDouble(), unit, path)
                : Derived.assumed(label, usual, unit, path, reason, Source.commonPractice());
    }
}
