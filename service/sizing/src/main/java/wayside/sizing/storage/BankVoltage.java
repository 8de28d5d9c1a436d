package wayside.sizing.storage;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * What a bank is at: {@code V = n V_cell} with n cells in series. On a bus of 12, 24 or 48 V the trade says how many; any
 * other nominal voltage is divided by the cell's and rounded up.
 */
public final class BankVoltage {
    private static final Expression CELLS = Expression.definition("n = ceil(V / V_cell - 1e-9)");
    private static final Expression NOMINAL = Expression.definition("V = n V_cell");
    private static final Expression HIGHEST = Expression.definition("V_max = n V_cell");

    private BankVoltage() {}

    /** Nominal voltage of the cells in series [V]: 12.8 where people say 12. */
    public static Derived nominalV(String label, ChemistryData data, Derived busVoltageV) {
        return NOMINAL.value(
                label,
                Unit.VOLT,
                cells(label, data, busVoltageV).as("n"),
                data.cellVoltageV().as("V_cell"));
    }

    /** The highest that they reach, charging or equalising [V]. */
    public static Derived highestV(String label, ChemistryData data, Derived busVoltageV) {
        return HIGHEST.value(
                label,
                Unit.VOLT,
                cells(label, data, busVoltageV).as("n"),
                data.highestCellVoltageV().as("V_cell"));
    }

    private static Derived cells(String label, ChemistryData data, Derived busVoltageV) {
        double bus = busVoltageV.value();
        return bus == 12 || bus == 24 || bus == 48
                ? data.cellsInSeries(bus)
                : CELLS.value(
                        label + ", cells in series",
                        Unit.COUNT,
                        busVoltageV.as("V"),
                        data.cellVoltageV().as("V_cell"));
    }
}
