package wayside.sizing.recharge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.charging.ChargePoint;
import wayside.sizing.charging.ChargingSource;
import wayside.sizing.charging.RechargeTime;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Shortfall;

/**
 * A recharge, or the reason why it never ends.
 *
 * @param shortfalls empty when it ends
 * @param powerW left for the bank by all sources [W]
 * @param acceptedW the most that the bank takes [W]
 * @param hours that it takes [h]
 * @param plainDivisionHours what energy divided by power would say [h]
 * @param curve evenly spaced moments
 * @param shares what each source brings
 */
public record Recharge(
        List<Shortfall> shortfalls,
        Derived powerW,
        Derived acceptedW,
        Optional<Derived> hours,
        Optional<Derived> plainDivisionHours,
        List<ChargePoint> curve,
        List<Share> shares) {
    public Recharge {
        shortfalls = List.copyOf(shortfalls);
        curve = List.copyOf(curve);
        shares = List.copyOf(shares);
    }

    /** How the recharge goes, or why it doesn't. */
    public static Recharge of(RechargeQuestion question) {
        List<Shortfall> shortfalls = RechargeShortfalls.of(question);
        return shortfalls.isEmpty() ? ended(question) : endless(question, shortfalls);
    }

    private static Recharge ended(RechargeQuestion question) {
        RechargeTime time = question.time();
        Derived hours = time.hours();
        List<Share> shares = new ArrayList<>();
        for (ChargingSource source : question.sources()) {
            shares.add(new Share(source.name(), source.powerW(), time.energyWh(source, hours)));
        }
        return new Recharge(
                List.of(),
                time.sourceW(),
                question.bank().acceptedW(),
                Optional.of(hours),
                Optional.of(time.plainDivisionHours()),
                time.curve(),
                shares);
    }

    private static Recharge endless(RechargeQuestion question, List<Shortfall> shortfalls) {
        return new Recharge(
                shortfalls,
                question.time().sourceW(),
                question.bank().acceptedW(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of());
    }

    public boolean feasible() {
        return shortfalls.isEmpty();
    }

    /**
     * A source's part.
     *
     * @param source {@code solar}, {@code alternator} or {@code shore}
     * @param powerW offered at the terminals [W]
     * @param energyWh over the recharge [Wh]
     */
    public record Share(String source, Derived powerW, Derived energyWh) {}
}
