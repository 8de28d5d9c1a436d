package wayside.sizing.charging;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.storage.ChargeAcceptance;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/**
 * How long a recharge takes with all sources at once, against what the bank accepts: {@code t = (s_k - s_0) E / (eta P) +
 * tau ln((1 - s_k) / (1 - s_1))}, {@code tau = E (1 - k) / (eta P_max)}. s_0 and s_1 [share] are where it starts and ends,
 * s_k [share] is where the bank begins to take less than the sources give, k [share] the knee at the maximum power P_max
 * [W], P [W] the sources together but not more than P_max, E [Wh] the rated energy, eta [share] the charge efficiency.
 * Full is where the current has fallen to the tail. It is always longer than energy divided by power.
 *
 * <p>Valid for steady sources. Common practice, no source; held against published figures in the tests.
 */
public final class RechargeTime {
    private static final int CURVE_POINTS = 48;

    private final ChargerNeed bank;
    private final List<ChargingSource> sources;
    private final Derived from;
    private final Derived to;
    private final Derived sourceW;
    private final Derived end;

    private RechargeTime(ChargerNeed bank, List<ChargingSource> sources, Derived loadW, Derived from, Derived to) {
        this.bank = bank;
        this.sources = sources;
        this.from = from;
        this.to = to;
        this.sourceW = together(sources, loadW);
        this.end = end();
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
        return Derived.computed(
                "recharge: hours",
                hoursTo(end.value()),
                Unit.HOUR,
                Formula.commonPractice(
                        "t = (s_k - s0) E / (eta P) + tau ln((1 - s_k) / (1 - s1)), tau = E (1 - k) / (eta"
                                + " P_max), P at most P_max, s_k = 1 - (1 - k) P / P_max"),
                from.as("s0"),
                end.as("s1"),
                bank.nominalEnergyWh().as("E"),
                bank.data().chargeEfficiency().as("eta"),
                sourceW.as("P"),
                bank.acceptedW().as("P_max"),
                bank.data().chargeKnee().as("k"));
    }

    /** What plain division would say [h]. Asks for {@code sourceW} above 0. */
    public Derived plainDivisionHours() {
        double energy =
                Math.max(0, end.value() - from.value()) * bank.nominalEnergyWh().value();
        return Derived.computed(
                "recharge: energy divided by power",
                energy / sourceW.value(),
                Unit.HOUR,
                Formula.definition("t = (s1 - s0) E / P"),
                end.as("s1"),
                from.as("s0"),
                bank.nominalEnergyWh().as("E"),
                sourceW.as("P"));
    }

    /** The recharge drawn: evenly spaced moments from start to end. Asks for {@code sourceW} above 0. */
    public List<ChargePoint> curve() {
        double hours = hoursTo(end.value());
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
        double stored =
                Math.max(0, end.value() - from.value()) * bank.nominalEnergyWh().value();
        double all = sources.stream().mapToDouble(s -> s.powerW().value()).sum();
        double net = stored / bank.data().chargeEfficiency().value();
        double loads = (all - sourceW.value()) * hours.value();
        return Derived.computed(
                source.name() + ": energy of the recharge",
                (net + loads) * source.powerW().value() / all,
                Unit.WATT_HOUR,
                Formula.definition("E_i = ((s1 - s0) E / eta + (P_all - P) t) P_i / P_all"),
                end.as("s1"),
                from.as("s0"),
                bank.nominalEnergyWh().as("E"),
                bank.data().chargeEfficiency().as("eta"),
                sourceW.as("P"),
                hours.as("t"),
                source.powerW().as("P_i"));
    }

    private double hoursTo(double state) {
        double steadyW = Math.min(sourceW.value(), bank.acceptedW().value());
        double knee = bank.data().chargeKnee().value();
        double meets = ChargeAcceptance.taperStart(steadyW, bank.acceptedW().value(), knee);
        double perHour = steadyW
                * bank.data().chargeEfficiency().value()
                / bank.nominalEnergyWh().value();
        double steady = Math.max(0, Math.min(meets, state) - from.value()) / perHour;
        double taperFrom = Math.max(meets, from.value());
        if (state <= taperFrom) {
            return steady;
        }
        double decay = bank.acceptedW().value()
                * bank.data().chargeEfficiency().value()
                / (bank.nominalEnergyWh().value() * (1 - knee));
        return steady + Math.log((1 - taperFrom) / (1 - state)) / decay;
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

    private static Derived together(List<ChargingSource> sources, Derived loadW) {
        List<Input> inputs = new ArrayList<>();
        double sum = 0;
        for (ChargingSource source : sources) {
            inputs.add(source.powerW().as("P_" + source.name()));
            sum += source.powerW().value();
        }
        inputs.add(loadW.as("P_loads"));
        return Derived.computed(
                "power for the bank from all sources",
                Math.max(0, sum - loadW.value()),
                Unit.WATT,
                Formula.definition("P = sum of all sources - P_loads, at least 0"),
                inputs.toArray(Input[]::new));
    }

    private Derived end() {
        ChemistryData data = bank.data();
        double full = ChargeAcceptance.fullAt(
                data.chargeKnee().value(),
                data.maximumChargeRate().typical().value(),
                data.tailRate().value());
        return Derived.computed(
                "state of charge at the end",
                Math.min(to.value(), full),
                Unit.SHARE,
                Formula.commonPractice(
                        "s1 = smaller of s and 1 - (1 - k) r_tail / r, where the current has fallen to the tail"),
                to.as("s"),
                data.chargeKnee().as("k"),
                data.tailRate().as("r_tail"),
                data.maximumChargeRate().typical().as("r"));
    }
}
