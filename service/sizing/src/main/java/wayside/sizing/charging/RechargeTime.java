package wayside.sizing.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wayside.sizing.storage.ChargeAcceptance;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * How long a recharge takes with all sources at once, against what the bank accepts ({@link ChargeAcceptance}). Full is where
 * the current has fallen to the tail. It is always longer than energy divided by power.
 *
 * <p>Valid for steady sources. Common practice, no source; held against published figures in the tests.
 */
public final class RechargeTime {
    private static final int CURVE_POINTS = 48;
    private static final Expression ALL = Expression.definition("P_all = sum(P_i)");
    private static final Expression LEFT = Expression.definition("P = max(0, P_all - P_loads)");
    private static final Expression END = Expression.commonPractice("s1 = min(s, 1 - (1 - k) min(1, r_tail / r))");
    private static final Expression STEADY = Expression.definition("P_in = min(P, P_max)");
    private static final Expression HOURS = Expression.definition("t = t1 + t2");
    private static final Expression PLAIN_HOURS = Expression.definition("t = max(0, s1 - s0) E / P");
    private static final Expression ENERGY =
            Expression.definition("E_i = (max(0, s1 - s0) E / eta + (P_all - P) t) P_i / P_all");

    private final String whose;
    private final ChargerNeed bank;
    private final Derived from;
    private final Derived allW;
    private final Derived sourceW;
    private final Derived end;

    private RechargeTime(ChargerNeed bank, List<ChargingSource> sources, Derived loadW, Derived from, Derived to) {
        this.whose = "recharge by " + names(sources) + ": ";
        this.bank = bank;
        this.from = from;
        this.allW = ALL.value(
                whose + "power of all sources together",
                Unit.WATT,
                sources.stream().map(source -> source.powerW().as("P_i")).toList());
        this.sourceW = LEFT.value(whose + "power left for the bank", Unit.WATT, allW.as("P_all"), loadW.as("P_loads"));
        this.end = end(bank.data(), to);
    }

    /**
     * @param sources offered at the terminals
     * @param loadW drawn meanwhile [W], 0 or more
     * @param from state of charge [share]
     * @param to state of charge [share], above {@code from}; 1 is full
     */
    public static RechargeTime of(
            ChargerNeed bank, List<ChargingSource> sources, Derived loadW, Derived from, Derived to) {
        return new RechargeTime(bank, sources, loadW, from, to);
    }

    /** Left for the bank by all sources [W]; 0 if the loads take all, and then the recharge never ends. */
    public Derived sourceW() {
        return sourceW;
    }

    /** Hours that it takes [h]. Asks for {@code sourceW} above 0. */
    public Derived hours() {
        Derived steadyW = STEADY.value(
                whose + "power until the taper",
                Unit.WATT,
                sourceW.as("P"),
                bank.acceptedW().as("P_max"));
        Derived taperStart = ChargeAcceptance.TAPER_START.value(
                whose + "state of charge where the taper begins",
                Unit.SHARE,
                bank.data().chargeKnee().as("k"),
                steadyW.as("P_in"),
                bank.acceptedW().as("P_max"));
        return HOURS.value(
                whose + "hours",
                Unit.HOUR,
                steadyHours(steadyW, taperStart).as("t1"),
                taperHours(taperStart).as("t2"));
    }

    private Derived steadyHours(Derived steadyW, Derived taperStart) {
        return ChargeAcceptance.STEADY_HOURS.value(
                whose + "hours until the taper",
                Unit.HOUR,
                taperStart.as("s_k"),
                end.as("s1"),
                from.as("s0"),
                steadyW.as("P_in"),
                bank.data().chargeEfficiency().as("eta"),
                bank.nominalEnergyWh().as("E"));
    }

    private Derived taperHours(Derived taperStart) {
        return ChargeAcceptance.TAPER_HOURS.value(
                whose + "hours of the taper",
                Unit.HOUR,
                taperStart.as("s_k"),
                from.as("s0"),
                end.as("s1"),
                bank.acceptedW().as("P_max"),
                bank.data().chargeEfficiency().as("eta"),
                bank.nominalEnergyWh().as("E"),
                bank.data().chargeKnee().as("k"));
    }

    /** What plain division would say [h]. Asks for {@code sourceW} above 0. */
    public Derived plainDivisionHours() {
        return PLAIN_HOURS.value(
                whose + "energy divided by power",
                Unit.HOUR,
                end.as("s1"),
                from.as("s0"),
                bank.nominalEnergyWh().as("E"),
                sourceW.as("P"));
    }

    /** The recharge drawn: evenly spaced moments from start to end. Asks for {@code sourceW} above 0. */
    public List<ChargePoint> curve() {
        double hours = hours().value();
        List<ChargePoint> points = new ArrayList<>();
        for (int i = 0; i <= CURVE_POINTS; i++) {
            double hour = hours * i / CURVE_POINTS;
            double state = stateAfter(hour);
            points.add(new ChargePoint(hour, state, powerAt(state)));
        }
        return points;
    }

    /**
     * Energy from a source into the terminals; all are throttled alike in the taper [Wh].
     *
     * @param source one of those given
     */
    public Derived energyWh(ChargingSource source, Derived hours) {
        return ENERGY.value(
                source.name() + ": energy of the recharge",
                Unit.WATT_HOUR,
                end.as("s1"),
                from.as("s0"),
                bank.nominalEnergyWh().as("E"),
                bank.data().chargeEfficiency().as("eta"),
                allW.as("P_all"),
                sourceW.as("P"),
                hours.as("t"),
                source.powerW().as("P_i"));
    }

    private double stateAfter(double hour) {
        return ChargeAcceptance.stateAfter(
                from.value(),
                sourceW.value(),
                bank.acceptedW().value(),
                bank.data().chargeKnee().value(),
                bank.data().chargeEfficiency().value(),
                bank.nominalEnergyWh().value(),
                hour);
    }

    private double powerAt(double state) {
        double accepted = ChargeAcceptance.powerW(
                state, bank.data().chargeKnee().value(), bank.acceptedW().value());
        return Math.min(sourceW.value(), accepted);
    }

    private static String names(List<ChargingSource> sources) {
        return sources.isEmpty()
                ? "nothing"
                : sources.stream().map(ChargingSource::name).collect(Collectors.joining(", "));
    }

    private static Derived end(ChemistryData data, Derived to) {
        return END.value(
                "state of charge at the end",
                Unit.SHARE,
                to.as("s"),
                data.chargeKnee().as("k"),
                data.tailRate().as("r_tail"),
                data.maximumChargeRate().typical().as("r"));
    }
}
