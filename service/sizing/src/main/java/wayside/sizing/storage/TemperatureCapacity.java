package wayside.sizing.storage;

import wayside.sizing.brief.Chemistry;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Unit;

/**
 * Share of the rated capacity that a bank gives at its temperature: {@code f_T = 1 / m(T)} for lead-acid with m the
 * multiplier of the trade's worksheet, {@code f_T(T)} from the trade's cold figures for lithium. Linear between rows,
 * held at the warm end: no gain in heat. Lead-acid goes on losing below its coldest row as the last two do, common practice;
 * lithium is held there.
 */
public final class TemperatureCapacity {
    private static final TemperatureCurve LEAD_ACID =
            TemperatureCurve.carriedOn("practice/lead-acid-temperature", "multiplier");
    private static final TemperatureCurve LITHIUM =
            TemperatureCurve.held("practice/lithium-temperature", "capacityShare");
    private static final Expression INVERSE = Expression.definition("f_T = 1 / m");

    private TemperatureCapacity() {}

    /**
     * @param temperatureC of the battery [C]
     * @return how much larger a lead-acid bank must be [1], 1 or more
     */
    public static double leadAcidMultiplier(double temperatureC) {
        return LEAD_ACID.at(temperatureC);
    }

    /**
     * @param temperatureC of the battery [C]
     * @return [share], above 0, at most 1
     */
    public static double capacityShare(Chemistry chemistry, double temperatureC) {
        return chemistry.isLeadAcid() ? 1 / LEAD_ACID.at(temperatureC) : LITHIUM.at(temperatureC);
    }

    /** The temperature from which on a bank gives all it has [C]. */
    public static double fullFromC(Chemistry chemistry) {
        return (chemistry.isLeadAcid() ? LEAD_ACID : LITHIUM).warmestC();
    }

    /** The traced share at a traced temperature. */
    public static Derived capacityShare(Chemistry chemistry, Derived temperatureC) {
        String label = chemistry.code() + ": capacity at temperature";
        if (!chemistry.isLeadAcid()) {
            return LITHIUM.value(label, Unit.SHARE, temperatureC);
        }
        Derived multiplier =
                LEAD_ACID.value(chemistry.code() + ": how much larger at temperature", Unit.COUNT, temperatureC);
        return INVERSE.value(label, Unit.SHARE, multiplier.as("m"));
    }
}
