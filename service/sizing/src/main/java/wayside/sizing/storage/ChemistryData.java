package wayside.sizing.storage;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * What the trade reckons with for a chemistry. Every figure is a row of the table {@code practice/chemistries}, whose
 * column {@code ground} says what stands behind it; none is a standard's. Use it for hourly loops through
 * {@code value()}, once, outside the loop.
 */
public final class ChemistryData {
    private static final String TABLE = "practice/chemistries";
    private static final String LOW = "low";
    private static final String TYPICAL = "typical";
    private static final String HIGH = "high";
    private static final Expression CHARGE_EFFICIENCY = Expression.definition("eta_c = eta / eta_d");
    private static final Map<Chemistry, ChemistryData> ALL = all();

    private final Chemistry chemistry;
    private final Map<String, Cells> rows = new HashMap<>();
    private final Derived chargeEfficiency;

    /** What a row prints of a quantity; empty cells are left out. */
    private record Cells(Optional<Derived> low, Optional<Derived> typical, Optional<Derived> high) {}

    private ChemistryData(Chemistry chemistry) {
        this.chemistry = chemistry;
        String prefix = chemistry.code() + ' ';
        ReferenceTable table = ReferenceTables.table(TABLE);
        table.rows().stream().filter(row -> row.key().startsWith(prefix)).forEach(row -> {
            String quantity = row.key().substring(prefix.length());
            rows.put(
                    quantity,
                    new Cells(
                            read(table, row, quantity, LOW),
                            read(table, row, quantity, TYPICAL),
                            read(table, row, quantity, HIGH)));
        });
        chargeEfficiency = CHARGE_EFFICIENCY.value(
                chemistry.code() + ": charge efficiency",
                Unit.SHARE,
                roundTripEfficiency().as("eta"),
                dischargeEfficiency().as("eta_d"));
    }

    public static ChemistryData of(Chemistry chemistry) {
        ChemistryData data = ALL.get(chemistry);
        if (data == null) {
            throw new IllegalStateException("No data for " + chemistry);
        }
        return data;
    }

    private static Map<Chemistry, ChemistryData> all() {
        Map<Chemistry, ChemistryData> all = new EnumMap<>(Chemistry.class);
        for (Chemistry chemistry : Chemistry.values()) {
            all.put(chemistry, new ChemistryData(chemistry));
        }
        return all;
    }

    private Optional<Derived> read(ReferenceTable table, ReferenceTable.Row row, String quantity, String column) {
        if (row.findNumber(column).isEmpty()) {
            return Optional.empty();
        }
        String label =
                chemistry.code() + ": " + quantity.replace('-', ' ') + (column.equals(TYPICAL) ? "" : ", " + column);
        return Optional.of(table.cell(label, row, column, unit(row.text("unit"))));
    }

    private static Unit unit(String symbol) {
        for (Unit unit : Unit.values()) {
            if (unit.symbol().equals(symbol)) {
                return unit;
            }
        }
        throw new IllegalStateException(TABLE + ": unknown unit " + symbol);
    }

    private Derived typical(String quantity) {
        return cells(quantity).typical().orElseThrow();
    }

    /** Of a quantity that the table must have of each chemistry. */
    private Cells cells(String quantity) {
        Cells cells = rows.get(quantity);
        if (cells == null || cells.typical().isEmpty()) {
            throw new IllegalStateException(TABLE + ": no typical " + quantity + " of " + chemistry.code());
        }
        return cells;
    }

    /** Where the table gives no end of the range, the typical figure stands for it. */
    private Range range(String quantity) {
        Cells cells = cells(quantity);
        Derived typical = cells.typical().orElseThrow();
        return new Range(cells.low().orElse(typical), typical, cells.high().orElse(typical));
    }

    public Chemistry chemistry() {
        return chemistry;
    }

    /** Share of the rated energy that is used in daily life [share]. */
    public Derived usableShare() {
        return typical("usable-share");
    }

    /** Energy out of the terminals per energy taken from the store [share]. */
    public Derived dischargeEfficiency() {
        return typical("discharge-efficiency");
    }

    /** Energy out per energy in, over a whole cycle [share]. */
    public Derived roundTripEfficiency() {
        return typical("round-trip-efficiency");
    }

    /** Energy stored per energy put into the terminals [share]. */
    public Derived chargeEfficiency() {
        return chargeEfficiency;
    }

    /** Share of the rated energy that is left when the battery counts as worn out [share]. */
    public Derived endOfLifeShare() {
        return typical("end-of-life-share");
    }

    /**
     * Cells in series for a bus.
     *
     * @param busVoltageV 12, 24 or 48
     */
    public Derived cellsInSeries(double busVoltageV) {
        return typical("cells-per-" + Math.round(busVoltageV) + "-v");
    }

    /** Nominal voltage of one cell [V]. */
    public Derived cellVoltageV() {
        return typical("cell-voltage");
    }

    /** Lowest voltage of one cell under load: currents are highest there [V]. */
    public Derived lowestCellVoltageV() {
        return typical("lowest-cell-voltage");
    }

    /** Voltage of one cell at the end of the bulk charge [V]. */
    public Range chargeCellVoltageV() {
        return range("charge-cell-voltage");
    }

    /** The highest that a cell ever reaches: equalising where the trade does that, else charging [V]. */
    public Derived highestCellVoltageV() {
        return Optional.ofNullable(rows.get("equalising-cell-voltage"))
                .flatMap(Cells::high)
                .orElseGet(() -> chargeCellVoltageV().high());
    }

    /** Voltage of one cell over most of a charge: what a charger's amperes are worth in watts [V]. */
    public Derived meanChargeCellVoltageV() {
        return typical("mean-charge-cell-voltage");
    }

    /** Below this cell temperature no charge may enter [C]. */
    public Derived lowestChargeC() {
        return typical("lowest-charge-temperature");
    }

    /** Above this cell temperature no charge may enter [C]. */
    public Derived highestChargeC() {
        return typical("highest-charge-temperature");
    }

    public Derived lowestDischargeC() {
        return typical("lowest-discharge-temperature");
    }

    public Derived highestDischargeC() {
        return typical("highest-discharge-temperature");
    }

    /** State of charge from which a charge at the maximum rate tapers [share]. */
    public Derived chargeKnee() {
        return typical("charge-knee");
    }

    /** Highest charging current as a part of the rated capacity [1/h]. */
    public Range maximumChargeRate() {
        return range("maximum-charge-rate");
    }

    /** Charging current that chargers are usually sized for, as a part of the rated capacity [1/h]. */
    public Derived usualChargeRate() {
        return typical("usual-charge-rate");
    }

    /** Charging current at which the battery counts as full, as a part of the rated capacity [1/h]. */
    public Derived tailRate() {
        return typical("tail-rate");
    }

    /** Highest steady discharging current as a part of the rated capacity [1/h]. */
    public Derived maximumDischargeRate() {
        return typical("maximum-discharge-rate");
    }

    /** Highest discharging current of a start, as a part of the rated capacity [1/h]. */
    public Derived peakDischargeRate() {
        return typical("peak-discharge-rate");
    }

    /** How long it may last [s]. */
    public Derived peakDischargeSeconds() {
        return typical("peak-discharge-time");
    }

    public Derived peukertExponent() {
        return typical("peukert-exponent");
    }

    /** Hours of the discharge that the rated capacity is stated for [h]. */
    public Derived ratedHours() {
        return typical("rated-hours");
    }

    public Derived selfDischargePerMonth() {
        return typical("self-discharge-per-month");
    }

    /** Cycles to the end of life at the depth that the table names [1]. */
    public Range cycleLife() {
        return range("cycle-life");
    }

    public Range specificEnergyWhPerKg() {
        return range("specific-energy");
    }

    public Range energyDensityWhPerL() {
        return range("energy-density");
    }

    /** Of a fully charged bank of 100 Ah at 12 V [Ohm]. */
    public Derived internalResistanceOhm() {
        return typical("internal-resistance-per-100-ah-12-v");
    }
}
