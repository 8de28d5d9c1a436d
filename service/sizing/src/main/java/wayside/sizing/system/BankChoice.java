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
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The bank of a recommendation.
 *
 * @param bank the one that was given, found by chance, or the next that exists above what the days ask for
 * @param neededWh rated energy that the days and the current ask for [Wh]
 * @param buyable the batteries that it is made of; empty when it was given, or where none are made so large
 * @param byChemistry what each chemistry would take, the chosen one among them
 */
public record BankChoice(
        BatteryBank bank, Derived neededWh, Optional<BuyableBank> buyable, List<BatteryBank> byChemistry) {
    private static final NamedOperation LARGEST = NamedOperation.of(
            NamedOperation.Kind.NEXT_SIZE,
            "the most energy of equal batteries of the chemistry that serve a bus of V; 0 where none does",
            Source.commonPractice());

    private static final Expression CAPACITY = Expression.definition("C = E / V");

    public BankChoice {
        byChemistry = List.copyOf(byChemistry);
    }

    static BankChoice of(Site site, SizePair pair) {
        ChemistryData data = site.chemistry();
        BatteryNeed need = hardest(site, data);
        Derived needed = pair.neededWh().orElseGet(() -> BatterySizing.nominalEnergyWh(data, need));
        Optional<Derived> given =
                given(site).or(() -> pair.bank().isPresent() ? Optional.empty() : pair.nominalEnergyWh());
        Optional<BuyableBank> buyable =
                given.isPresent() ? Optional.empty() : pair.bank().or(() -> next(site, data, needed));
        BatteryBank bank = built(data, need, given.orElse(needed), buyable);
        List<BatteryBank> all = new ArrayList<>();
        for (Chemistry chemistry : Chemistry.values()) {
            all.add(chemistry == data.chemistry() ? bank : sized(site, chemistry));
        }
        return new BankChoice(bank, needed, buyable, all);
    }

    private static Optional<BuyableBank> next(Site site, ChemistryData data, Derived neededWh) {
        return BatteryPack.next(site, data, neededWh.value()).map(pack -> BuyableBank.next(data, pack, neededWh));
    }

    /** Of whole batteries, or as it was given or is needed where none are made. */
    private static BatteryBank built(
            ChemistryData data, BatteryNeed need, Derived nominalWh, Optional<BuyableBank> buyable) {
        return buyable.map(batteries -> BatteryBank.of(data, need, batteries.energyWh())
                        .ofBatteries(batteries.massKg(), batteries.volumeL()))
                .orElseGet(() -> BatteryBank.of(data, need, nominalWh));
    }

    /** The same at the bank's voltage [Ah]. */
    public Derived neededAh() {
        return CAPACITY.value(
                bank.data().chemistry().code() + " bank: rated capacity needed",
                Unit.AMPERE_HOUR,
                neededWh.as("E"),
                bank.bankVoltageV().as("V"));
    }

    /** Rated energy below which no bank gives the highest current [Wh]. */
    public static Derived leastWh(Site site) {
        return BatterySizing.forTheCurrent(site.chemistry(), hardest(site, site.chemistry()));
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
        BatteryNeed need = hardest(site, data);
        Derived needed = BatterySizing.nominalEnergyWh(data, need);
        return built(data, need, needed, next(site, data, needed));
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

    public List<Shortfall> shortfalls(Site site) {
        List<Shortfall> shortfalls = new ArrayList<>();
        boolean given = site.brief().system().nominalEnergyWh().isPresent();
        if (given && bank.nominalEnergyWh().value() < neededWh.value()) {
            shortfalls.add(new Shortfall(Message.of(ShortfallCode.BANK_TOO_SMALL), neededWh, bank.nominalEnergyWh()));
        }
        if (!given
                && buyable.isEmpty()
                && bank.nominalEnergyWh().value() > largestWh(site).value()) {
            shortfalls.add(new Shortfall(Message.of(ShortfallCode.BANK_NOT_MADE), neededWh, largestWh(site)));
        }
        new LockerRoom(site.brief().system().locker()).shortfall(bank, buyable).ifPresent(shortfalls::add);
        return shortfalls;
    }

    private static Derived largestWh(Site site) {
        double largest = BatteryPack.all(site, site.chemistry()).stream()
                .mapToDouble(BatteryPack::energyWh)
                .max()
                .orElse(0);
        return LARGEST.value(
                "bank: the largest of whole batteries",
                largest,
                Unit.WATT_HOUR,
                site.busVoltageV().as("V"));
    }
}
