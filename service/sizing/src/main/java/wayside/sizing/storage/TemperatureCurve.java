package wayside.sizing.storage;

import java.util.List;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Source;

/** A table of a figure by temperature, printed from warm to cold: linear between its rows, held at both ends. */
final class TemperatureCurve {
    private final ReferenceTable table;
    private final double[] temperaturesC;
    private final double[] values;

    private TemperatureCurve(ReferenceTable table, double[] temperaturesC, double[] values) {
        this.table = table;
        this.temperaturesC = temperaturesC;
        this.values = values;
    }

    static TemperatureCurve read(String name, String column) {
        ReferenceTable table = ReferenceTables.table(name);
        List<ReferenceTable.Row> rows = table.rows();
        double[] temperatures = new double[rows.size()];
        double[] values = new double[rows.size()];
        for (int i = 0; i < temperatures.length; i++) {
            ReferenceTable.Row row = rows.get(temperatures.length - 1 - i);
            temperatures[i] = row.number("temperatureC");
            values[i] = row.number(column);
        }
        return new TemperatureCurve(table, temperatures, values);
    }

    String table() {
        return table.name();
    }

    Source source() {
        return table.source();
    }

    double at(double temperatureC) {
        if (temperatureC <= temperaturesC[0]) {
            return values[0];
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
