package wayside.sizing.brief;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Asks how long a battery takes to fill.
 *
 * @param at where it was given
 * @param fromStateOfCharge where it starts [share]; empty if absent
 * @param toStateOfCharge where it ends [share]; full if absent
 * @param sources that run at once; all that the system has if empty
 * @param sunShare of full sun, 1,000 W/m2 [share]; full sun if absent
 * @param ambientC air around panels and battery [C]
 * @param loadW drawn meanwhile [W]; nothing if absent
 */
public record RechargeBrief(
        At at,
        BuiltSystem system,
        OptionalDouble fromStateOfCharge,
        OptionalDouble toStateOfCharge,
        List<ChargingKind> sources,
        OptionalDouble sunShare,
        OptionalDouble ambientC,
        OptionalDouble loadW)
        implements Placed {
    public RechargeBrief {
        sources = List.copyOf(sources);
    }

    /** From empty to full with all that the system has. */
    public static RechargeBrief of(BuiltSystem system) {
        return new RechargeBrief(
                At.ROOT,
                system,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    public RechargeBrief in(double newAmbientC) {
        return new RechargeBrief(
                at,
                system,
                fromStateOfCharge,
                toStateOfCharge,
                sources,
                sunShare,
                OptionalDouble.of(newAmbientC),
                loadW);
    }
}
