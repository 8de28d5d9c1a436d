package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import wayside.sizing.journey.BankWarmth;
import wayside.sizing.journey.JourneyStay;
import wayside.sizing.solar.plane.Plane;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.solar.plane.SolarDay;
import wayside.sizing.storage.ChargeWindow;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Which part of a stay's charge finds a bank that may be charged, on the mean day: a bank that is too cold or too hot takes
 * nothing from sun, engine or hookup in those hours. Empty where every hour is open.
 *
 * @param sun part of the sun's energy [share]
 * @param driving part of the engine's hours [share]
 * @param hookup part of the hours at a hookup [share]
 */
record OpenHours(Optional<Derived> sun, Optional<Derived> driving, Optional<Derived> hookup) {
    private static final NamedOperation OPEN = NamedOperation.of(
            NamedOperation.Kind.MONTH_INTEGRAL,
            "share of the source's energy in those hours of the mean day in which the bank, whose wave of swing D_b lags the air's by"
                    + " atan(w tau) / w and which a heater warms by dT_heater below T_on, is between the lowest and the highest at"
                    + " which it may be charged",
            Source.commonPractice());
    private static final Expression ENERGY = Expression.definition("E = E_all s");

    /** Of a bank that may be charged in every hour. */
    static final OpenHours ALL = new OpenHours(Optional.empty(), Optional.empty(), Optional.empty());

    static OpenHours of(JourneyStay stay, ChemistryData data) {
        boolean[] open = open(stay, data);
        return new OpenHours(
                share(stay, data, "sun", sunByHour(stay), open),
                share(stay, data, "engine", stay.drivenByHour(1), open),
                share(stay, data, "hookup", stay.hookedUpByHour(1), open));
    }

    private static boolean[] open(JourneyStay stay, ChemistryData data) {
        double[] bankC = stay.bank().dayC();
        boolean[] open = new boolean[bankC.length];
        for (int hour = 0; hour < open.length; hour++) {
            open[hour] = ChargeWindow.mayCharge(data, bankC[hour]);
        }
        return open;
    }

    private static double[] sunByHour(JourneyStay stay) {
        SolarDay day = SolarDay.of(
                stay.stay().place().latitude(),
                SolarCalendar.meanDayOfYear(stay.stay().month()),
                Plane.of(0, 0));
        double[] byHour = new double[Unit.HOURS_PER_DAY];
        for (int hour = 0; hour < byHour.length; hour++) {
            byHour[hour] = day.globalShare(hour);
        }
        return byHour;
    }

    private static Optional<Derived> share(
            JourneyStay stay, ChemistryData data, String source, double[] byHour, boolean[] open) {
        double all = DoubleStream.of(byHour).sum();
        double taken = 0;
        boolean closed = false;
        for (int hour = 0; hour < byHour.length; hour++) {
            taken += open[hour] ? byHour[hour] : 0;
            closed |= !open[hour] && byHour[hour] > 0;
        }
        return closed
                ? Optional.of(OPEN.value(
                        stay.label() + ": share of the " + source
                                + "'s charge that finds the bank neither too cold nor too hot",
                        taken / all,
                        Unit.SHARE,
                        grounds(stay.bank(), data)))
                : Optional.empty();
    }

    private static List<Input> grounds(BankWarmth bank, ChemistryData data) {
        List<Input> inputs = new ArrayList<>(List.of(
                bank.unheatedC().as("T_b"),
                bank.swingK().as("D_b"),
                bank.place().lagHours().as("tau"),
                data.lowestChargeC().as("T_low"),
                data.highestChargeC().as("T_high")));
        bank.place().heating().ifPresent(heater -> {
            inputs.add(heater.onBelowC().as("T_on"));
            inputs.add(heater.riseK().as("dT_heater"));
        });
        return inputs;
    }

    /** What enters the bank of an energy that is on offer [Wh]. */
    static Derived taken(Optional<Derived> share, Derived offered) {
        return share.map(open -> ENERGY.value(
                        offered.label() + ", while the bank may be charged",
                        Unit.WATT_HOUR,
                        offered.as("E_all"),
                        open.as("s")))
                .orElse(offered);
    }
}
