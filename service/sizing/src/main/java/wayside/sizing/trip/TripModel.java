package wayside.sizing.trip;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntFunction;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Trip;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.endurance.LedgerDay;
import wayside.sizing.endurance.ModelWeather;
import wayside.sizing.endurance.StaySky;
import wayside.sizing.solar.AirTemperature;
import wayside.sizing.solar.ArrayModel;
import wayside.sizing.solar.MonthAt;
import wayside.sizing.solar.SkyMonth;
import wayside.sizing.solar.SolarMonth;

/**
 * A trip made ready for the ledger.
 *
 * @param trip as asked
 * @param months what each stay's sun is like
 * @param budgets what a day of each stay takes
 * @param uncertainty of the stays' skies
 */
public record TripModel(Trip trip, List<SolarMonth> months, List<EnergyBudget> budgets, SkyUncertainty uncertainty) {
    static final String SYSTEM = "/system";

    public TripModel {
        months = List.copyOf(months);
        budgets = List.copyOf(budgets);
    }

    /** What a trip and its loads leave open is filled in. */
    static TripModel of(Trip trip, EnergyBrief energy, PanelMount panel, Sampling sampling) {
        List<SolarMonth> months = new ArrayList<>();
        for (Stay stay : trip.stays()) {
            months.add(SolarMonth.of(stay, months.size(), panel, SYSTEM + "/panel"));
        }
        return new TripModel(trip, months, budgets(energy, months), SkyUncertainty.of(sampling, months));
    }

    /** The same trip under the same skies with other loads, or another use of the inverter. */
    public TripModel taking(EnergyBrief energy) {
        return new TripModel(trip, months, budgets(energy, months), uncertainty);
    }

    private static List<EnergyBudget> budgets(EnergyBrief energy, List<SolarMonth> months) {
        boolean changing =
                energy.loads().stream().anyMatch(load -> !load.ambientDuty().isEmpty());
        List<EnergyBudget> budgets = new ArrayList<>();
        for (SolarMonth month : months) {
            budgets.add(
                    changing || budgets.isEmpty()
                            ? EnergyBudget.of(energy, month.sky().meanC(), SYSTEM)
                            : budgets.get(0));
        }
        return budgets;
    }

    /** The weather of the trip, drawn day by day; the same on any panel. */
    public ModelWeather weather(long seed, PanelMount panel) {
        List<StaySky> skies = new ArrayList<>();
        for (int i = 0; i < months.size(); i++) {
            double latitude = trip.stays().get(i).place().latitude();
            skies.add(sky(i, ArrayModel.of(panel, SYSTEM + "/panel", latitude)));
        }
        return new ModelWeather(skies, seed);
    }

    private StaySky sky(int index, ArrayModel array) {
        MonthAt at = MonthAt.of(trip.stays().get(index), index);
        return new StaySky(
                at.place().latitude(),
                at.month(),
                trip.stays().get(index).nights(),
                months.get(index).sky(),
                array,
                uncertainty.scatter(index));
    }

    /**
     * The days of the trip.
     *
     * @param alternatorW at the bank while driving [W]
     * @param shoreW at the bank while plugged in [W]
     * @param bankC temperature of the bank at a stay [C], by kind of day and hour
     * @param driving from the hours that the request gives to those that are lived
     */
    public List<LedgerDay> days(
            double alternatorW,
            double shoreW,
            IntFunction<double[][]> bankC,
            DoubleUnaryOperator driving,
            DoubleUnaryOperator hookup) {
        List<LedgerDay> days = new ArrayList<>();
        for (int i = 0; i < months.size(); i++) {
            Stay stay = trip.stays().get(i);
            HourlyDemand demand = HourlyDemand.of(budgets.get(i));
            days.add(new LedgerDay(
                    stay.nights(),
                    demand.essential(),
                    demand.other(),
                    HoursOfDay.power(
                            alternatorW, HoursOfDay.DRIVING_FROM, driving.applyAsDouble(stay.drivingHoursPerDay())),
                    HoursOfDay.power(shoreW, HoursOfDay.HOOKUP_FROM, hookup.applyAsDouble(stay.hookupHoursPerDay())),
                    bankC.apply(i)));
        }
        return days;
    }

    /**
     * Air of a stay, whose days are all alike.
     *
     * @param offsetK added to it
     * @return [C] by hour
     */
    public double[] airC(int stay, double offsetK) {
        SkyMonth sky = months.get(stay).sky();
        double[] result = new double[LedgerDay.HOURS];
        for (int hour = 0; hour < result.length; hour++) {
            result[hour] = offsetK
                    + AirTemperature.hourC(
                            sky.meanC().value(), sky.dailySwingK().value(), hour);
        }
        return result;
    }
}
