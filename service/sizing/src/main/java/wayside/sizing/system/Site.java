package wayside.sizing.system;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.journey.StayHours;
import wayside.sizing.solar.SolarMonth;
import wayside.sizing.storage.BankPlace;
import wayside.sizing.storage.BatteryNeed;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The question in figures: what every stay gives and takes, before anything is sized.
 *
 * @param offsetK how much warmer than the air the bank stands [K]
 * @param stays in the order of the trip
 */
public record Site(SystemBrief brief, Derived busVoltageV, Derived offsetK, List<SiteStay> stays) {
    private static final Expression BANK_C = Expression.definition("T = Tm + dT");
    private static final double AUTONOMY_DAYS = 2;
    private static final double AUTONOMY_DAYS_WITH_HELP = 1;
    private static final double MARGIN = 0.2;

    public Site {
        stays = List.copyOf(stays);
    }

    public static Site of(SystemBrief brief) {
        SystemWishes wishes = brief.system();
        Derived bus = Derived.byDefault(
                        "nominal bus voltage",
                        12,
                        Unit.VOLT,
                        wishes.at("busVoltageV"),
                        "What most camper loads are made for",
                        Source.commonPractice())
                .unlessGiven(wishes.busVoltageV());
        Derived offset = BankPlace.offsetK(wishes.bankPlacement());
        Derived autonomy = autonomy(brief);
        Derived margin = Derived.convention(
                "room for loads to come",
                MARGIN,
                Unit.SHARE,
                "A fifth more than is listed today; list what you already know of",
                Source.commonPractice());
        return new Site(brief, bus, offset, stays(brief, bus, offset, autonomy, margin));
    }

    private static List<SiteStay> stays(
            SystemBrief brief, Derived bus, Derived offset, Derived autonomy, Derived margin) {
        SystemWishes wishes = brief.system();
        EnergyBrief energy = new EnergyBrief(
                wishes.at(), brief.loads(), wishes.busVoltageV(), wishes.inverter(), wishes.standbyW(), OptionalDouble.empty());
        boolean changing =
                brief.loads().stream().anyMatch(load -> !load.ambientDuty().isEmpty());
        List<SiteStay> stays = new ArrayList<>();
        for (Stay stay : brief.trip().stays()) {
            int index = stays.size();
            SolarMonth month = SolarMonth.of(stay, index, wishes.panel());
            EnergyBudget budget = changing || stays.isEmpty()
                    ? EnergyBudget.of(energy, month.sky().meanC(), "stay " + (index + 1) + ": ")
                    : stays.get(0).budget();
            Derived bankC = bankC(index, month, offset);
            stays.add(new SiteStay(
                    index,
                    stay,
                    month,
                    budget,
                    bankC,
                    need(budget, bankC, bus, autonomy, margin),
                    StayHours.driving(stay, index),
                    StayHours.hookup(stay, index)));
        }
        return stays;
    }

    private static Derived bankC(int index, SolarMonth month, Derived offset) {
        Derived airC = month.sky().meanC();
        return BANK_C.value(
                "stay " + (index + 1) + ": mean temperature of the bank",
                Unit.CELSIUS,
                airC.as("Tm"),
                offset.as("dT"));
    }

    private static BatteryNeed need(EnergyBudget budget, Derived bankC, Derived bus, Derived autonomy, Derived margin) {
        return new BatteryNeed(
                budget.dailyTotalWh(), autonomy, margin, bankC, BankDraw.steadyW(budget), BankDraw.peakW(budget), bus);
    }

    private static Derived autonomy(SystemBrief brief) {
        String field = brief.target().at("autonomyDays");
        if (brief.target().autonomyDays().isPresent()) {
            return Derived.given(
                    "days without any charge", brief.target().autonomyDays().getAsDouble(), Unit.DAY, field);
        }
        boolean helped = brief.trip().stays().stream()
                .allMatch(stay -> stay.drivingHours() + stay.hookupHours() >= 1);
        return Derived.byDefault(
                "days without any charge",
                helped ? AUTONOMY_DAYS_WITH_HELP : AUTONOMY_DAYS,
                Unit.DAY,
                field,
                helped
                        ? "You drive or plug in every day, so the battery bridges one day without either"
                        : "Two dull days in a row are common; more days cost battery, fewer cost worry",
                Source.commonPractice());
    }

    public ChemistryData chemistry() {
        return ChemistryData.of(brief.system().chemistry().orElse(Chemistry.LFP));
    }

    /** The stay whose day takes most. */
    public SiteStay thirstiest() {
        return stays.stream()
                .max(Comparator.comparingDouble(s -> s.budget().dailyTotalWh().value()))
                .orElseThrow();
    }

    SiteStay coldest() {
        return stays.stream()
                .min(Comparator.comparingDouble(SiteStay::coldestBankC))
                .orElseThrow();
    }

    SiteStay hottest() {
        return stays.stream()
                .max(Comparator.comparingDouble(SiteStay::hottestAfternoonC))
                .orElseThrow();
    }

    Optional<SiteStay> thirstiestDriving() {
        return thirstiestOf(
                stays.stream().filter(s -> s.drivingHours().value() > 0).toList());
    }

    Optional<SiteStay> thirstiestHookedUp() {
        return thirstiestOf(
                stays.stream().filter(s -> s.hookupHours().value() > 0).toList());
    }

    private static Optional<SiteStay> thirstiestOf(List<SiteStay> some) {
        return some.stream()
                .max(Comparator.comparingDouble(s -> s.budget().dailyTotalWh().value()));
    }

    /** Choices of the question itself: chemistry, where the bank sits, where the sky comes from. */
    List<Assumption> choices() {
        List<Assumption> choices = new ArrayList<>();
        if (brief.system().chemistry().isEmpty()) {
            choices.add(Assumption.choice(
                    brief.system().at("chemistry"),
                    "battery chemistry",
                    Chemistry.LFP.code(),
                    "Lightest and longest-lived for daily use; the others stand beside it",
                    Source.commonPractice()));
        }
        stays.forEach(stay -> choices.addAll(stay.month().choices()));
        return choices;
    }
}
