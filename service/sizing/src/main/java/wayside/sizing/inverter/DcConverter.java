package wayside.sizing.inverter;

import java.util.Optional;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.demand.Demand;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A converter between a bus and DC loads of another voltage: what it takes for itself, and what it draws from the bus for them.
 *
 * <p>Common practice, no source: trade pages give 85 to 90 % and 90 to 95 %, so a day's energy is reckoned with the middle, cables
 * and bank with the lower; a watt or a few stand by.
 *
 * @param loadsVoltageV nominal voltage that the DC loads are made for [V]
 * @param lossWh of a day, standing by and converting [Wh]
 * @param standbyWh of it, standing by [Wh]
 */
public record DcConverter(Derived loadsVoltageV, Derived lossWh, Derived standbyWh) {
    private static final double LOADS_V = 12;
    private static final double EFFICIENCY = 0.92;
    private static final double EFFICIENCY_AT_FULL_CURRENT = 0.87;
    private static final double STANDBY_W = 2;
    private static final Expression STANDBY = Expression.definition("E = P h").with("h", Unit.HOURS_PER_DAY, Unit.HOUR);
    private static final Expression LOSS = Expression.definition("E = E_standby + (E_dc / eta - E_dc)");
    private static final Expression FROM_THE_BUS = Expression.definition("P_bus = P / eta");

    /** Empty where the DC loads take the bus's own voltage, or there are none. */
    public static Optional<DcConverter> find(EnergyBrief brief, Demand demand, Derived busVoltageV) {
        Derived loads = loadsVoltageV(brief);
        boolean same = loads.value() == busVoltageV.value();
        return same || demand.dc().peakPowerW().value() == 0 ? Optional.empty() : Optional.of(of(loads, demand));
    }

    private static DcConverter of(Derived loadsVoltageV, Demand demand) {
        Derived standbyW = Derived.convention(
                "DC converter: power standing by",
                STANDBY_W,
                Unit.WATT,
                "From one to five watts are usual",
                Source.commonPractice());
        Derived standby = STANDBY.value("DC converter: energy of standing by", Unit.WATT_HOUR, standbyW.as("P"));
        Derived loss = LOSS.value(
                demand.whose() + "DC converter: daily loss",
                Unit.WATT_HOUR,
                standby.as("E_standby"),
                demand.dc().dailyEnergyWh().as("E_dc"),
                efficiency().as("eta"));
        return new DcConverter(loadsVoltageV, loss, standby);
    }

    private static Derived loadsVoltageV(EnergyBrief brief) {
        return Derived.byDefault(
                        "DC loads: nominal voltage",
                        LOADS_V,
                        Unit.VOLT,
                        brief.at("dcLoadsVoltageV"),
                        "Lights, pumps and fans are made for 12 V; say so where yours take the voltage of the bus",
                        Source.commonPractice())
                .unlessGiven(brief.dcLoadsVoltageV());
    }

    private static Derived efficiency() {
        return Derived.convention(
                "DC converter: efficiency over a day",
                EFFICIENCY,
                Unit.SHARE,
                "Converters of this kind give 90 to 95 %",
                Source.commonPractice());
    }

    /** Of the daily loss, what follows the loads [Wh]. */
    public double conversionWh() {
        return lossWh.value() - standbyWh.value();
    }

    /** What a power of the loads draws from the bus at full current [W]. */
    public Derived fromTheBusW(Derived loadsW) {
        Derived efficiency = Derived.convention(
                "DC converter: efficiency at full current",
                EFFICIENCY_AT_FULL_CURRENT,
                Unit.SHARE,
                "Trade pages give 85 to 90 % and 90 to 95 %; cables and bank are sized for the lower",
                Source.commonPractice());
        return FROM_THE_BUS.value(loadsW.label() + ", from the bus", Unit.WATT, loadsW.as("P"), efficiency.as("eta"));
    }
}
