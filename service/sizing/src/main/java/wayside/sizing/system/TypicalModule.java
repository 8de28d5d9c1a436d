package wayside.sizing.system;

import java.util.Optional;
import wayside.sizing.solar.array.ModuleFigures;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** An invented module of the 36-cell class, to string an array of which only the power is known. */
public final class TypicalModule {
    public static final double POWER_W = 100;

    private static final String REASON =
            "An invented module of 36 cells and 100 W; check the strings with your own module's label";

    private static final Expression CURRENT = Expression.definition("I = I_0 P / P_0");

    private TypicalModule() {}

    static ModuleFigures figures() {
        return of(assumed("module: short-circuit current", 6, Unit.AMPERE));
    }

    /** A module of the same cells that gives another power: its current follows. */
    static ModuleFigures figures(Derived powerW) {
        return of(CURRENT.value(
                "module: short-circuit current",
                Unit.AMPERE,
                powerW.as("P"),
                powerW().as("P_0"),
                assumed("module of 100 W: short-circuit current", 6, Unit.AMPERE)
                        .as("I_0")));
    }

    private static ModuleFigures of(Derived shortCircuitA) {
        return new ModuleFigures(
                assumed("module: open-circuit voltage", 22, Unit.VOLT),
                assumed("module: working voltage", 18, Unit.VOLT),
                shortCircuitA,
                Optional.empty(),
                Optional.empty());
    }

    /** The largest fuse that its label lets stand in series with it. */
    static Derived largestSeriesFuseA() {
        return assumed("module: largest series fuse", 15, Unit.AMPERE);
    }

    static Derived powerW() {
        return assumed("module: usual rated power", POWER_W, Unit.WATT);
    }

    public static Derived powerPerArea() {
        return Derived.convention(
                "rated power of a square metre of panel",
                180,
                Unit.WATT_PER_SQUARE_METRE_PANEL,
                "Framed silicon modules give 160 to 210 W for each square metre",
                Source.commonPractice());
    }

    private static Derived assumed(String label, double value, Unit unit) {
        return Derived.convention(label, value, unit, REASON, Source.commonPractice());
    }
}
