package wayside.sizing.storage;

import java.util.Optional;
import wayside.sizing.brief.BankHeater;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A heater on a bank, fed by the bank: it warms it by {@code P / L} in the end, P [W], L [W/K] the heat that the bank loses for
 * each degree above the air, as slowly as the bank follows the air.
 *
 * @param powerW while it is on [W]
 * @param onBelowC it goes on when the bank is colder [C]
 * @param offAboveC it goes off when the bank is warmer [C]
 * @param lossWPerK that the bank loses for each degree [W/K]
 * @param riseK by which it warms the bank when it stays on [K]
 */
public record BankHeating(Derived powerW, Derived onBelowC, Derived offAboveC, Derived lossWPerK, Derived riseK) {
    private static final double ON_BELOW_C = 2;
    /** From where it goes on to where it goes off [K]. */
    private static final double APART_K = 3;

    static final double OFF_ABOVE_C = ON_BELOW_C + APART_K;

    private static final Expression RISE = Expression.commonPractice("dT = P / L");
    private static final Expression DAY = Expression.commonPractice("E = h min(P, L max(0, (T_on + T_off) / 2 - T))")
            .with("h", Unit.HOURS_PER_DAY, Unit.HOUR);
    private static final Expression WARMED = Expression.commonPractice("T = max(T_b, min(T_on, T_b + dT))");

    static Optional<BankHeating> of(BankPlacement placement, Derived lagHours) {
        return placement.heater().map(heater -> of(heater, BankLag.lossWPerK(placement, lagHours)));
    }

    private static BankHeating of(BankHeater heater, Derived loss) {
        Derived power = Derived.given("heater of the bank: power", heater.powerW(), Unit.WATT, heater.at("powerW"));
        Derived on = Derived.byDefault(
                        "heater of the bank: on below",
                        Math.min(ON_BELOW_C, heater.offAboveC().orElse(OFF_ABOVE_C) - APART_K),
                        Unit.CELSIUS,
                        heater.at("onBelowC"),
                        "A little above the frost in which a lithium bank takes no charge",
                        Source.commonPractice())
                .unlessGiven(heater.onBelowC());
        Derived off = Derived.byDefault(
                        "heater of the bank: off above",
                        on.value() + APART_K,
                        Unit.CELSIUS,
                        heater.at("offAboveC"),
                        "Three degrees above where it goes on, so that it need not switch all the time",
                        Source.commonPractice())
                .unlessGiven(heater.offAboveC());
        Derived rise = RISE.value("heater of the bank: warms it by at most", Unit.KELVIN, power.as("P"), loss.as("L"));
        return new BankHeating(power, on, off, loss, rise);
    }

    /**
     * What it takes on a day on which the unheated bank would be so cold [Wh].
     *
     * @param label of the figure
     */
    public Derived dayWh(String label, Derived unheatedC) {
        return DAY.value(
                label,
                Unit.WATT_HOUR,
                powerW.as("P"),
                lossWPerK.as("L"),
                onBelowC.as("T_on"),
                offAboveC.as("T_off"),
                unheatedC.as("T"));
    }

    /** How warm it holds a bank that would be so cold without it [C]. */
    public Derived warmedC(Derived unheatedC) {
        return WARMED.value(
                unheatedC.label() + ", heated", Unit.CELSIUS, unheatedC.as("T_b"), onBelowC.as("T_on"), riseK.as("dT"));
    }

    /** The same in plain figures [C]. */
    public double warmedC(double unheatedC) {
        return Math.max(unheatedC, Math.min(onBelowC.value(), unheatedC + riseK.value()));
    }
}
