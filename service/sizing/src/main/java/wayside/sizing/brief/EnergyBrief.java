package wayside.sizing.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a day's energy budget is asked for.
 *
 * @param at where it was given, but for the loads
 * @param loads at least one
 * @param busVoltageV nominal voltage of the battery bus [V]; 12 if absent
 * @param inverter what is known of the inverter
 * @param standbyW constant draw of monitors, outlets and electronics [W]; a default if absent
 * @param ambientC for the fridge's duty [C]; a default if absent
 * @param inverterSizes that are to be had; the usual ones if empty
 * @param dcLoadsVoltageV that the DC loads are made for [V]; 12 if absent
 * @param chosenBusV what takes the place of 12 V where the bus was left open [V]
 * @param mains the hookup
 */
public record EnergyBrief(
        At at,
        List<Load> loads,
        OptionalDouble busVoltageV,
        InverterSpec inverter,
        OptionalDouble standbyW,
        OptionalDouble ambientC,
        List<InverterSize> inverterSizes,
        OptionalDouble dcLoadsVoltageV,
        OptionalDouble chosenBusV,
        Mains mains)
        implements Placed {
    /** A brief that leaves the sizes of inverters open. */
    public EnergyBrief(
            At at,
            List<Load> loads,
            OptionalDouble busVoltageV,
            InverterSpec inverter,
            OptionalDouble standbyW,
            OptionalDouble ambientC) {
        this(
                at,
                loads,
                busVoltageV,
                inverter,
                standbyW,
                ambientC,
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Mains.open(at.field("mains")));
    }

    public EnergyBrief {
        loads = List.copyOf(loads);
        inverterSizes = List.copyOf(inverterSizes);
    }

    public static EnergyBrief of(Load... loads) {
        return new EnergyBrief(
                At.ROOT,
                Load.list(At.ROOT.field("loads"), loads),
                OptionalDouble.empty(),
                InverterSpec.OPEN,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** The same with all loads drawing so many times their power. */
    public EnergyBrief drawing(double factor) {
        List<Load> all = loads.stream().map(load -> load.drawing(factor)).toList();
        return new EnergyBrief(
                at, all, busVoltageV, inverter, standbyW, ambientC, inverterSizes, dcLoadsVoltageV, chosenBusV, mains);
    }

    /** The same with another load in the place of one. */
    public EnergyBrief with(int index, Load load) {
        List<Load> all = new ArrayList<>(loads);
        all.set(index, load);
        return new EnergyBrief(
                at, all, busVoltageV, inverter, standbyW, ambientC, inverterSizes, dcLoadsVoltageV, chosenBusV, mains);
    }

    public EnergyBrief standby(double newStandbyW) {
        return new EnergyBrief(
                at,
                loads,
                busVoltageV,
                inverter,
                OptionalDouble.of(newStandbyW),
                ambientC,
                inverterSizes,
                dcLoadsVoltageV,
                chosenBusV,
                mains);
    }

    public EnergyBrief through(InverterSpec newInverter) {
        return new EnergyBrief(
                at,
                loads,
                busVoltageV,
                newInverter,
                standbyW,
                ambientC,
                inverterSizes,
                dcLoadsVoltageV,
                chosenBusV,
                mains);
    }

    public EnergyBrief atVolts(double newBusVoltageV) {
        return new EnergyBrief(
                at,
                loads,
                OptionalDouble.of(newBusVoltageV),
                inverter,
                standbyW,
                ambientC,
                inverterSizes,
                dcLoadsVoltageV,
                chosenBusV,
                mains);
    }

    public EnergyBrief inAmbient(double newAmbientC) {
        return new EnergyBrief(
                at,
                loads,
                busVoltageV,
                inverter,
                standbyW,
                OptionalDouble.of(newAmbientC),
                inverterSizes,
                dcLoadsVoltageV,
                chosenBusV,
                mains);
    }
}
