package wayside.sizing.system;

import wayside.sizing.brief.BatterySize;
import wayside.sizing.sizes.NextSize;
import wayside.sizing.sizes.SizeFigure;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Unit;

/**
 * A bank of whole batteries.
 *
 * @param pack the batteries
 * @param seriesCount in each string
 * @param parallelCount strings
 * @param count of batteries
 * @param voltageV of each, nominal [V]
 * @param capacityAh of each, rated [Ah]
 * @param energyWh of all, rated [Wh]
 * @param massKg of all
 * @param volumeL of all
 * @param lengthMm of each
 * @param widthMm of each
 * @param heightMm of each
 */
public record BuyableBank(
        BatteryPack pack,
        Derived seriesCount,
        Derived parallelCount,
        Derived count,
        Derived voltageV,
        Derived capacityAh,
        Derived energyWh,
        Derived massKg,
        Derived volumeL,
        Derived lengthMm,
        Derived widthMm,
        Derived heightMm) {
    private static final NamedOperation NEXT = NextSize.operation(
            "the equal batteries of the chemistry, in series for the bus and side by side as often as"
                    + " their row allows,");
    private static final Expression COUNT = Expression.definition("n = s p");
    private static final Expression ENERGY = Expression.definition("E = s p V C");
    private static final Expression MASS = Expression.definition("m = s p m_1");
    private static final Expression VOLUME = Expression.definition("V = s p l w h / 1000000");

    static BuyableBank next(ChemistryData data, BatteryPack pack, Derived neededWh) {
        return of(data, pack, NEXT, neededWh.as("E"));
    }

    /**
     * @param how the batteries were chosen
     * @param ground by what
     */
    public static BuyableBank of(ChemistryData data, BatteryPack pack, NamedOperation how, Input... ground) {
        String bank = data.chemistry().code() + " bank: ";
        BatterySize battery = pack.battery();
        Derived series = how.value(bank + "batteries in series", pack.series(), Unit.COUNT, ground);
        Derived parallel = how.value(bank + "strings of batteries", pack.parallel(), Unit.COUNT, ground);
        Derived volts = SizeFigure.of(battery, bank + "volts of a battery", battery.voltageV(), Unit.VOLT, "voltageV");
        Derived capacity = SizeFigure.of(
                battery, bank + "capacity of a battery", battery.capacityAh(), Unit.AMPERE_HOUR, "capacityAh");
        Derived length = side(battery, bank, "length", battery.box().lengthMm());
        Derived width = side(battery, bank, "width", battery.box().widthMm());
        Derived height = side(battery, bank, "height", battery.box().heightMm());
        Input s = series.as("s");
        Input p = parallel.as("p");
        return new BuyableBank(
                pack,
                series,
                parallel,
                COUNT.value(bank + "batteries", Unit.COUNT, s, p),
                volts,
                capacity,
                ENERGY.value(
                        bank + "rated energy of the batteries", Unit.WATT_HOUR, s, p, volts.as("V"), capacity.as("C")),
                MASS.value(
                        bank + "mass of the batteries",
                        Unit.KILOGRAM,
                        s,
                        p,
                        SizeFigure.massKg(battery, bank + "mass of a battery").as("m_1")),
                VOLUME.value(
                        bank + "volume of the batteries",
                        Unit.LITRE,
                        s,
                        p,
                        length.as("l"),
                        width.as("w"),
                        height.as("h")),
                length,
                width,
                height);
    }

    private static Derived side(BatterySize battery, String bank, String side, double mm) {
        return SizeFigure.of(battery, bank + side + " of a battery", mm, Unit.MILLIMETRE, side + "Mm");
    }
}
