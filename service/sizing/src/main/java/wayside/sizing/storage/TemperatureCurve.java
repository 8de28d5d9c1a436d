package wayside.sizing.storage;

import java.util.List;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Unit;

/** A table of a figure by temperature, printed from warm to cold: linear between its rows. */
final class TemperatureCurve {
    private final NamedOperation betweenRows;
    private final double[] temperaturesC;
    private final double[] values;

    private final double perKBelow;

    private TemperatureCurve(NamedOperation betweenRows, double perKBelow, double[] temperaturesC, double[] values) {
        this.betweenRows = betweenRows;
        this.perKBelow = perKBelow;
        this.temperaturesC = temperaturesC;
        this.values = values;
    }

    /** Held at both ends. */
    static TemperatureCurve held(String name, String column) {
        return read(name, column, false);
    }

    /** Held at the warm end, carried on below the coldest row as the last two rise. */
    static TemperatureCurve carriedOn(String name, String column) {
        return read(name, column, true);
    }

    private static TemperatureCurve read(String name, String column, boolean carriedOn) {
        ReferenceTable table = ReferenceTables.table(name);
        List<ReferenceTable.Row> rows = table.rows();
        double[] temperatures = new double[rows.size()];
        double[] values = new double[rows.size()];
        for (int i = 0; i < temperatures.length; i++) {
            ReferenceTable.Row row = rows.get(temperatures.length - 1 - i);
            temperatures[i] = row.number("temperatureC");
            values[i] = row.number(column);
        }
        NamedOperation betweenRows = NamedOperation.of(
                NamedOperation.Kind.INTERPOLATION,
                "Linear in the temperature T between the rows of " + name + ", column " + column
                        + (carriedOn
                                ? "; held at the warm end, carried on below the coldest row as the last two rise"
                                : "; held at both ends"),
                table.source());
        double perK = carriedOn ? (values[1] - values[0]) / (temperatures[1] - temperatures[0]) : 0;
        return new TemperatureCurve(betweenRows, perK, temperatures, values);
    }

    Derived value(String label, Unit unit, Derived temperatureC) {
        return betweenRows.value(label, at(temperatureC.value()), unit, temperatureC.as("T"));
    }

    /** Temperature of the warmest row [C]. */
    double warmestC() {
        return temperaturesC[temperaturesC.length - 1];
    }

    double at(double temperatureC) {
        if (temperatureC <= temperaturesC[0]) {
            return values[0] - perKBelow * (temperaturesC[0] - temperatureC);
        }
        for (int i = 1; i < values.length; i++) {
            if (temperatureC <= temperaturesC[i]) {
                double part = (temperatureC - temperaturesC[i - 1]) / (temperaturesC[i] - temperaturesC[i - 1]);
                return values[i - 1] + part * (values[i] - values[i - 1]);
            }
        }
        return values[values.length - 1];
    }
}
