package wayside.sizing.system;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.storage.BatteryNeed;
import wayside.sizing.storage.BatterySizing;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Unit;

/**
 * The bank of a recommendation.
 *
 * @param bank the one that was given, found by chance, or sized by days of autonomy
 * @param neededWh rated energy that the days and the current ask for [Wh]
 * @param byChemistry what each chemistry would take, the chosen one among them
 */
public record BankChoice(BatteryBank bank, Derived neededWh, List<BatteryBank> byChemistry) {
    public BankChoice {
        byChemistry = List.copyOf(byChemistry);
    }

    static BankChoice of(Site site, Optional<Derived> nominalWh) {
        ChemistryData data = site.chemistry();
        Derived needed = BatterySizing.nominalEnergyWh(data, hardest(site, data));
        BatteryBank bank = bank(site, given(site).or(() -> nominalWh).orElse(needed));
        List<BatteryBank> all = new ArrayList<>();
        for (Chemistry chemistry : Chemistry.values()) {
            all.add(chemistry == data.chemistry() ? bank : sized(site, chemistry));
        }
        return new BankChoice(bank, needed, all);
    }

    /** A bank of a size, in the chemistry of the site. */
    static BatteryBank bank(Site site, Derived nominalWh) {
        return BatteryBank.of(site.chemistry(), hardest(site, site.chemistry()), nominalWh);
    }

    /** Each stay asks for a bank at its own temperature and with its own day; the largest wins. */
    private static BatteryNeed hardest(Site site, ChemistryData data) {
        return site.needs().stream()
                .max(Comparator.comparingDouble(
                        need -> BatterySizing.nominalEnergyWh(data, need).value()))
                .orElseThrow();
    }

    private static BatteryBank sized(Site site, Chemistry chemistry) {
        ChemistryData data = ChemistryData.of(chemistry);
        return BatteryBank.sized(data, hardest(site, data));
    }

    private static Optional<Derived> given(Site site) {
        return site.brief().system().nominalEnergyWh().isPresent()
                ? Optional.of(Derived.given(
                        "rated energy of the bank",
                        site.brief().system().nominalEnergyWh().getAsDouble(),
                        Unit.WATT_HOUR,
                        site.brief().system().at("nominalEnergyWh")))
                : Optional.empty();
    }

    public Optional<Shortfall> shortfall(Site site) {
        if (site.brief().system().nominalEnergyWh().isEmpty()
                || bank.nominalEnergyWh().value() >= neededWh.value()) {
            return Optional.empty();
        }
        return Optional.of(new Shortfall(Message.of(ShortfallCode.BANK_TOO_SMALL), neededWh, bank.nominalEnergyWh()));
    }
}
