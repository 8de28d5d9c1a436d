package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.SizesThatExist;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.journey.Journey;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.sizes.SizeTables;
import wayside.sizing.storage.BatteryNeed;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Assumption;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * The question in figures, before anything is sized: the trip made ready, and what a bank must carry on it.
 *
 * @param journey the trip made ready
 * @param margin in hand for loads to come [share]
 * @param needs what the bank must carry, by stay
 */
public record Site(SystemBrief brief, Journey journey, Derived margin, List<BatteryNeed> needs) {
    private static final double AUTONOMY_DAYS = 2;
    private static final double AUTONOMY_DAYS_WITH_HELP = 1;
    private static final double MARGIN = 0.2;

    public Site {
        needs = List.copyOf(needs);
    }

    public static Site of(SystemBrief brief) {
        Journey journey = Journey.of(brief);
        Derived autonomy = autonomy(brief);
        Derived margin = Derived.convention(
                "room for loads to come",
                MARGIN,
                Unit.SHARE,
                "A fifth more than is listed today; list what you already know of",
                Source.commonPractice());
        List<BatteryNeed> needs = journey.stays().stream()
                .map(stay -> need(stay, journey.busVoltageV(), autonomy, margin, brief.system()))
                .toList();
        return new Site(brief, journey, margin, needs);
    }

    /** The same question on a changed trip. */
    public Site on(Journey changed) {
        return new Site(brief, changed, margin, needs);
    }

    private static BatteryNeed need(
            JourneyStay stay, Derived bus, Derived autonomy, Derived margin, SystemWishes wishes) {
        return new BatteryNeed(
                stay.budget().dailyTotalWh(),
                autonomy,
                margin,
                stay.bank().meanC(),
                BankDraw.steadyW(stay.budget()),
                wishes.bankRates().maximumDischargeA().isPresent() ? anyPower() : BankDraw.peakW(stay.budget()),
                bus);
    }

    private static Derived anyPower() {
        return Derived.convention(
                "power that asks for a larger bank",
                0,
                Unit.WATT,
                "What the bank gives for hours was given, and is judged by itself",
                Source.definition());
    }

    private static Derived autonomy(SystemBrief brief) {
        String field = brief.target().at("autonomyDays");
        if (brief.target().autonomyDays().isPresent()) {
            return Derived.given(
                    "days without any charge", brief.target().autonomyDays().getAsDouble(), Unit.DAY, field);
        }
        boolean helped = brief.trip().stays().stream().allMatch(stay -> stay.drivingHours() + stay.hookupHours() >= 1);
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

    public Derived busVoltageV() {
        return journey.busVoltageV();
    }

    /** What is to be had: the request's ladders, else the usual ones. */
    public SizesThatExist sizes() {
        return brief.system().sizes().or(SizeTables.usual());
    }

    public ChemistryData chemistry() {
        return ChemistryData.of(brief.system().chemistry().orElse(Chemistry.LFP));
    }

    /** When the bank may be charged on a stay. */
    OpenHours openHours(JourneyStay stay) {
        return OpenHours.of(stay, chemistry());
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
        choices.addAll(journey.choices());
        return choices;
    }
}
