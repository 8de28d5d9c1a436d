package wayside.sizing.storage;

import java.util.List;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Formula;
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

    /** The smallest bank of a chemistry that meets a need. */
    public static BatteryBank sized(ChemistryData data, BatteryNeed need) {
        return of(data, need, BatterySizing.nominalEnergyWh(data, need));
    }

    /** A bank of a rated energy, judged by a need. */
    public static BatteryBank of(ChemistryData data, BatteryNeed need, Derived nominalEnergyWh) {
        Derived voltage = bankVoltage(data, need.busVoltageV());
        Derived usable = product(
                data,
                "usable energy",
                Unit.WATT_HOUR,
                "E_use = E f_use",
                nominalEnergyWh.as("E"),
                data.usableShare().as("f_use"));
        Derived cold = product(
                data,
                "usable energy in the cold",
                Unit.WATT_HOUR,
                "E_cold = E_use f_T",
                usable.as("E_use"),
                TemperatureCapacity.capacityShare(data.chemistry(), need.coldC())
                        .as("f_T"));
        return new BatteryBank(
                data,
                need.busVoltageV(),
                voltage,
                lowestVoltage(data, need.busVoltageV()),
                nominalEnergyWh,
                quotient(
                        data,
                        "rated capacity",
                        Unit.AMPERE_HOUR,
                        "C = E / V",
                        nominalEnergyWh.as("E"),
                        voltage.as("V")),
                usable,
                cold,
                autonomy(data, need, cold),
                shareOut(data, "mass", Unit.KILOGRAM, nominalEnergyWh, data.specificEnergyWhPerKg()),
                shareOut(data, "volume", Unit.LITRE, nominalEnergyWh, data.energyDensityWhPerL()));
    }

    /** Cells in series times the voltage of one: 12.8 V where people say 12 V, for LFP. */
    public static Derived bankVoltage(ChemistryData data, Derived busVoltageV) {
        Derived cells = data.cellsInSeries(busVoltageV.value());
        return product(
                data,
                "nominal voltage",
                Unit.VOLT,
                "V = n V_cell",
                cells.as("n"),
                data.cellVoltageV().as("V_cell"));
    }

    private static Derived lowestVoltage(ChemistryData data, Derived busVoltageV) {
        return product(
                data,
                "lowest voltage under load",
                Unit.VOLT,
                "V_low = n V_cell",
                data.cellsInSeries(busVoltageV.value()).as("n"),
                data.lowestCellVoltageV().as("V_cell"));
    }

    /** The figures in reading order. */
    public List<Derived> figures() {
        return List.of(
                nominalEnergyWh,
                bankVoltageV,
                nominalCapacityAh,
                data.usableShare(),
                usableEnergyWh,
                coldUsableEnergyWh,
                autonomyDays,
                data.lowestChargeC(),
                data.lowestDischargeC(),
                massKg.low(),
                massKg.typical(),
                massKg.high(),
                volumeL.low(),
                volumeL.typical(),
                volumeL.high());
    }

    private static Derived autonomy(ChemistryData data, BatteryNeed need, Derived cold) {
        double days = need.dailyWh().value() > 0
                ? cold.value()
                        * data.dischargeEfficiency().value()
                        / need.dailyWh().value()
                : 0;
        return Derived.computed(
                BatterySizing.name(data, "days carried without charge"),
                days,
                Unit.DAY,
                Formula.definition("n = E_cold eta_d / E_d"),
                cold.as("E_cold"),
                data.dischargeEfficiency().as("eta_d"),
                need.dailyWh().as("E_d"));
    }

    /** The densest cell gives the lowest mass. */
    private static Range shareOut(ChemistryData data, String what, Unit unit, Derived energy, Range density) {
        return new Range(
                quotient(
                        data,
                        what + ", low",
                        unit,
                        "E / e",
                        energy.as("E"),
                        density.high().as("e")),
                quotient(
                        data,
                        what,
                        unit,
                        "E / e",
                        energy.as("E"),
                        density.typical().as("e")),
                quotient(
                        data,
                        what + ", high",
                        unit,
                        "E / e",
                        energy.as("E"),
                        density.low().as("e")));
    }

    private static Derived product(ChemistryData data, String what, Unit unit, String text, Input a, Input b) {
        return Derived.computed(
                BatterySizing.name(data, what),
                a.value().value() * b.value().value(),
                unit,
                Formula.definition(text),
                a,
                b);
    }

    private static Derived quotient(ChemistryData data, String what, Unit unit, String text, Input a, Input b) {
        return Derived.computed(
                BatterySizing.name(data, what),
                a.value().value() / b.value().value(),
                unit,
                Formula.definition(text),
                a,
                b);
    }
}
