package wayside.sizing.storage;

import static wayside.sizing.storage.BatterySizing.name;

import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Unit;

/**
 * A bank in figures: rated, usable and usable in the cold, each said apart, for they are what people mix up.
 *
 * @param data of its chemistry
 * @param busVoltageV nominal voltage of the system [V]
 * @param bankVoltageV cells in series times the cell's nominal voltage [V]
 * @param lowestVoltageV under load: currents are highest there [V]
 * @param nominalEnergyWh rated [Wh]
 * @param nominalCapacityAh rated, at the bank's own voltage [Ah]
 * @param usableEnergyWh of a new bank at room temperature [Wh]
 * @param coldUsableEnergyWh in the coldest part of the trip [Wh]
 * @param autonomyDays that it carries the day's energy in the cold, new and without charge [d]
 * @param massKg of cells and case
 * @param volumeL of cells and case
 */
public record BatteryBank(
        ChemistryData data,
        Derived busVoltageV,
        Derived bankVoltageV,
        Derived lowestVoltageV,
        Derived nominalEnergyWh,
        Derived nominalCapacityAh,
        Derived usableEnergyWh,
        Derived coldUsableEnergyWh,
        Derived autonomyDays,
        Range massKg,
        Range volumeL) {
    private static final Expression VOLTAGE = Expression.definition("V = n V_cell");
    private static final Expression LOWEST_VOLTAGE = Expression.definition("V_low = n V_cell");
    private static final Expression USABLE = Expression.definition("E_use = E f_use");
    private static final Expression COLD = Expression.definition("E_cold = E_use f_T");
    private static final Expression CAPACITY = Expression.definition("C = E / V");
    private static final Expression AUTONOMY = Expression.definition("n = E_cold eta_d / E_d");
    private static final Expression AUTONOMY_OF_NOTHING = Expression.definition("n = 0");
    private static final Expression MASS = Expression.definition("m = E / e");
    private static final Expression VOLUME = Expression.definition("V = E / e");

    /** The smallest bank of a chemistry that meets a need. */
    public static BatteryBank sized(ChemistryData data, BatteryNeed need) {
        return of(data, need, BatterySizing.nominalEnergyWh(data, need));
    }

    /** A bank of a rated energy, judged by a need. */
    public static BatteryBank of(ChemistryData data, BatteryNeed need, Derived nominalEnergyWh) {
        Derived voltage = bankVoltage(data, need.busVoltageV());
        Derived usable = USABLE.value(
                name(data, "usable energy"),
                Unit.WATT_HOUR,
                nominalEnergyWh.as("E"),
                data.usableShare().as("f_use"));
        Derived cold = COLD.value(
                name(data, "usable energy in the cold"),
                Unit.WATT_HOUR,
                usable.as("E_use"),
                TemperatureCapacity.capacityShare(data.chemistry(), need.coldC())
                        .as("f_T"));
        return new BatteryBank(
                data,
                need.busVoltageV(),
                voltage,
                lowestVoltage(data, need.busVoltageV()),
                nominalEnergyWh,
                CAPACITY.value(
                        name(data, "rated capacity"), Unit.AMPERE_HOUR, nominalEnergyWh.as("E"), voltage.as("V")),
                usable,
                cold,
                autonomy(data, need, cold),
                shareOut(MASS, data, "mass", Unit.KILOGRAM, nominalEnergyWh, data.specificEnergyWhPerKg()),
                shareOut(VOLUME, data, "volume", Unit.LITRE, nominalEnergyWh, data.energyDensityWhPerL()));
    }

    /** The same as whole batteries of known mass and size. */
    public BatteryBank ofBatteries(Derived wholeKg, Derived wholeL) {
        return new BatteryBank(
                data,
                busVoltageV,
                bankVoltageV,
                lowestVoltageV,
                nominalEnergyWh,
                nominalCapacityAh,
                usableEnergyWh,
                coldUsableEnergyWh,
                autonomyDays,
                new Range(wholeKg, wholeKg, wholeKg),
                new Range(wholeL, wholeL, wholeL));
    }

    /** Cells in series times the voltage of one: 12.8 V where people say 12 V, for LFP. */
    public static Derived bankVoltage(ChemistryData data, Derived busVoltageV) {
        return VOLTAGE.value(
                name(data, "nominal voltage"),
                Unit.VOLT,
                data.cellsInSeries(busVoltageV.value()).as("n"),
                data.cellVoltageV().as("V_cell"));
    }

    private static Derived lowestVoltage(ChemistryData data, Derived busVoltageV) {
        return LOWEST_VOLTAGE.value(
                name(data, "lowest voltage under load"),
                Unit.VOLT,
                data.cellsInSeries(busVoltageV.value()).as("n"),
                data.lowestCellVoltageV().as("V_cell"));
    }

    private static Derived autonomy(ChemistryData data, BatteryNeed need, Derived cold) {
        String label = name(data, "days carried without charge");
        if (need.dailyWh().value() == 0) {
            return AUTONOMY_OF_NOTHING.value(label, Unit.DAY);
        }
        return AUTONOMY.value(
                label,
                Unit.DAY,
                cold.as("E_cold"),
                data.dischargeEfficiency().as("eta_d"),
                need.dailyWh().as("E_d"));
    }

    /** The densest cell gives the lowest mass. */
    private static Range shareOut(
            Expression expression, ChemistryData data, String what, Unit unit, Derived energy, Range density) {
        String label = name(data, what);
        Input whole = energy.as("E");
        return new Range(
                expression.value(label + ", low", unit, whole, density.high().as("e")),
                expression.value(label, unit, whole, density.typical().as("e")),
                expression.value(label + ", high", unit, whole, density.low().as("e")));
    }
}
