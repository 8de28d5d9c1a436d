package wayside.sizing.system;

import java.util.Optional;
import wayside.sizing.solar.ModuleFigures;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** An invented module of the 36-cell class, to string an array of which only the power is known. */
public final class TypicalModule {
    public static final double POWER_W = 100;

    private static final String REASON =
            "An invented module of 36 cells and 100 W; check the strings with your own module's label";

    private TypicalModule() {}

    static ModuleFigures figures() {
        return new ModuleFigures(
                assumed("module: open-circuit voltage", 22, Unit.VOLT),
                assumed("module: working voltage", 18, Unit.VOLT),
                assumed("module: short-circuit current", 6, Unit.AMPERE),
                Optional.empty(),
                Optional.empty());
    }

    static Derived powerW() {
        return assumed("module: rated power", POWER_W, Unit.WATT);
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
