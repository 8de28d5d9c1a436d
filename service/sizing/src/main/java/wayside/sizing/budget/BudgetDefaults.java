package wayside.sizing.budget;

import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.storage.BusVoltage;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** What a budget takes besides its loads, as given or as is usual. */
final class BudgetDefaults {
    /** Outlets, monitor, alarms: about 5 W left on all day. Common practice, no source. */
    private static final double STANDBY_W = 5;

    private static final double AMBIENT_C = 25;
    private static final Expression DAY_AND_NIGHT =
            Expression.definition("E = P h").with("h", Unit.HOURS_PER_DAY, Unit.HOUR);

    private BudgetDefaults() {}

    static Derived ambientC(EnergyBrief brief) {
        return Derived.byDefault(
                        "ambient temperature",
                        AMBIENT_C,
                        Unit.CELSIUS,
                        brief.at("ambientC"),
                        "A warm day in a parked vehicle",
                        Source.commonPractice())
                .unlessGiven(brief.ambientC());
    }

    static Derived busVoltageV(EnergyBrief brief) {
        String field = brief.at("busVoltageV");
        return brief.chosenBusV().isPresent()
                ? BusVoltage.nominalV(brief.busVoltageV(), brief.chosenBusV().getAsDouble(), field)
                : BusVoltage.nominalV(brief.busVoltageV(), field);
    }

    static Derived standbyWh(EnergyBrief brief) {
        Derived power = Derived.byDefault(
                        "standby power",
                        STANDBY_W,
                        Unit.WATT,
                        brief.at("standbyW"),
                        "Outlets, battery monitor and alarms draw about this much day and night",
                        Source.commonPractice())
                .unlessGiven(brief.standbyW());
        return DAY_AND_NIGHT.value("standby energy", Unit.WATT_HOUR, power.as("P"));
    }
}
