package wayside.sizing.storage;

import java.util.OptionalDouble;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/** The voltage of the bus between bank and loads, as far as a request says. Common practice, no source. */
public final class BusVoltage {
    /** Where nobody says [V]. */
    public static final double NOMINAL_V = 12;

    /** What a nearly empty bank leaves of it: 1.75 V per lead-acid cell, 10.5 V on a 12 V bus [share]. */
    public static final double LOWEST_SHARE = 0.875;

    private BusVoltage() {}

    /**
     * The nominal voltage where a higher one than usual was chosen.
     *
     * @param given in the request [V]
     * @param chosenV otherwise [V]
     * @param field that gives it
     * @return [V]
     */
    public static Derived nominalV(OptionalDouble given, double chosenV, String field) {
        return Derived.byDefault(
                        "nominal bus voltage",
                        chosenV,
                        Unit.VOLT,
                        field,
                        "The lowest on which the battery gives and takes no more than 200 A for hours",
                        Source.commonPractice())
                .unlessGiven(given);
    }

    /**
     * The nominal voltage.
     *
     * @param given in the request [V]
     * @param field that gives it
     * @return [V]
     */
    public static Derived nominalV(OptionalDouble given, String field) {
        return Derived.byDefault(
                        "nominal bus voltage",
                        NOMINAL_V,
                        Unit.VOLT,
                        field,
                        "What most camper loads are made for",
                        Source.commonPractice())
                .unlessGiven(given);
    }
}
