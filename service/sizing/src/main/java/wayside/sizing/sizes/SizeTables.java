package wayside.sizing.sizes;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import wayside.sizing.brief.AlternatorChargerSize;
import wayside.sizing.brief.BatterySize;
import wayside.sizing.brief.Box;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.ControllerSize;
import wayside.sizing.brief.ConverterSize;
import wayside.sizing.brief.InverterSize;
import wayside.sizing.brief.ModuleSize;
import wayside.sizing.brief.ShoreChargerSize;
import wayside.sizing.brief.SizeOrigin;
import wayside.sizing.brief.SizesThatExist;
import wayside.sizing.brief.UnitSize;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;

/** The usual sizes of the trade, read from the practice tables. */
public final class SizeTables {
    private static final String FOLDER = "practice/sizes-";
    private static final SizesThatExist USUAL = new SizesThatExist(
            rows("batteries", SizeTables::battery),
            rows("modules", SizeTables::module),
            rows("controllers", SizeTables::controller),
            rows("alternator-chargers", SizeTables::alternatorCharger),
            rows("shore-chargers", SizeTables::shoreCharger),
            rows("inverters", SizeTables::inverter),
            rows("converters", SizeTables::converter),
            rows("units", SizeTables::unit));

    private SizeTables() {}

    public static SizesThatExist usual() {
        return USUAL;
    }

    private static <S> List<S> rows(String table, Function<Line, S> reader) {
        ReferenceTable read = ReferenceTables.table(FOLDER + table);
        return read.rows().stream()
                .map(row -> reader.apply(new Line(read.name(), row)))
                .toList();
    }

    private static BatterySize battery(Line line) {
        return new BatterySize(
                line.origin(),
                chemistry(line.row().text("chemistry")),
                line.of("voltage_V"),
                line.of("capacity_Ah"),
                line.count("most_in_series"),
                line.count("most_in_parallel"),
                line.massKg(),
                line.box());
    }

    private static Chemistry chemistry(String code) {
        return Arrays.stream(Chemistry.values())
                .filter(chemistry -> chemistry.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("No chemistry " + code));
    }

    private static ModuleSize module(Line line) {
        return new ModuleSize(
                line.origin(),
                line.of("power_W"),
                line.of("open_circuit_V"),
                line.of("working_V"),
                line.of("short_circuit_A"),
                line.of("working_A"),
                line.of("largest_series_fuse_A"),
                line.massKg(),
                line.box());
    }

    private static ControllerSize controller(Line line) {
        return new ControllerSize(
                line.origin(),
                line.of("highest_array_V"),
                line.of("current_A"),
                line.of("highest_bus_V"),
                line.massKg(),
                line.box());
    }

    private static AlternatorChargerSize alternatorCharger(Line line) {
        return new AlternatorChargerSize(
                line.origin(),
                line.of("input_V"),
                line.of("output_V"),
                line.of("current_A"),
                line.count("most_together"),
                line.massKg(),
                line.box());
    }

    private static ShoreChargerSize shoreCharger(Line line) {
        return new ShoreChargerSize(
                line.origin(),
                line.of("output_V"),
                line.of("current_A"),
                line.count("most_together"),
                line.massKg(),
                line.box());
    }

    private static InverterSize inverter(Line line) {
        return new InverterSize(
                line.origin(),
                line.of("continuous_W"),
                line.of("surge_W"),
                line.count("most_together"),
                line.massKg(),
                line.box());
    }

    private static ConverterSize converter(Line line) {
        return new ConverterSize(
                line.origin(),
                line.of("input_V"),
                line.of("output_V"),
                line.of("current_A"),
                line.massKg(),
                line.box());
    }

    private static UnitSize unit(Line line) {
        return new UnitSize(
                line.origin(),
                line.of("energy_Wh"),
                line.of("inverter_W"),
                line.of("surge_W"),
                line.of("solar_W"),
                line.massKg(),
                line.box());
    }

    /** A row and the table that it stands in. */
    private record Line(String table, ReferenceTable.Row row) {
        SizeOrigin origin() {
            return SizeOrigin.row(table, row.key());
        }

        double of(String column) {
            return row.number(column);
        }

        int count(String column) {
            return (int) row.number(column);
        }

        double massKg() {
            return row.number("mass_kg");
        }

        Box box() {
            return new Box(of("length_mm"), of("width_mm"), of("height_mm"));
        }
    }
}
