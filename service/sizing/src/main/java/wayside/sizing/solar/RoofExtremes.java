package wayside.sizing.solar;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.solar.array.CellTemperature;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The coldest morning and the hottest roof of a set of months: what a string of modules must stand. */
public final class RoofExtremes {
    private static final Expression COLDEST = Expression.commonPractice("T = min(T_m - D / 2) - s");
    private static final Expression HOTTEST = Expression.of(
                    "T_c = max(T_m + D / 2) + G r",
                    ReferenceTables.table(CellTemperature.TABLE).source())
            .with("G", 1000, Unit.WATT_PER_SQUARE_METRE);

    private RoofExtremes() {}

    /**
     * Air on the coldest morning of all months: {@code T = min(T_m - D / 2) - s}. Common practice, no source.
     *
     * @param months not empty
     * @param field JSON Pointer of the field that states it instead
     * @return [C]
     */
    public static Derived coldestC(List<SolarMonth> months, String field) {
        List<Input> inputs = air(months);
        inputs.add(Derived.byDefault(
                        "cold spell below the mean morning",
                        10,
                        Unit.KELVIN,
                        field,
                        "Single mornings fall about this far below the month's mean one; give a record low if you know it",
                        Source.commonPractice())
                .as("s"));
        return COLDEST.value("air on the coldest morning", Unit.CELSIUS, inputs);
    }

    /**
     * Cells on the roof on the hottest afternoon of all months in full sun: {@code T_c = max(T_m + D / 2) + 1000 r}.
     *
     * @param months of one array, not empty
     * @return [C]
     */
    public static Derived hottestCellC(List<SolarMonth> months) {
        List<Input> inputs = air(months);
        inputs.add(months.get(0).array().riseKPerWm2().as("r"));
        return HOTTEST.value("cells on the hottest roof", Unit.CELSIUS, inputs);
    }

    private static List<Input> air(List<SolarMonth> months) {
        List<Input> inputs = new ArrayList<>();
        for (SolarMonth month : months) {
            inputs.add(month.sky().meanC().as("T_m"));
            inputs.add(month.sky().dailySwingK().as("D"));
        }
        return inputs;
    }
}
