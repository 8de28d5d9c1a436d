package wayside.sizing;

import java.util.List;
import wayside.sizing.brief.At;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Trip;

/** Questions in few words, for tests. */
final class Briefs {
    private Briefs() {}

    /** A week under a sky of so many sun hours, in still air of one temperature. */
    static Stay stay(double sunHours, double ambientC) {
        return Stay.of(Place.of(35, 10), 6, 7)
                .under(new Sky.DailyIrradiation(sunHours))
                .at(new Ambient(ambientC, 0));
    }

    /** What is given of a system: chemistry, bus, and a bank and array that may be absent (0). */
    static SystemWishes wishes(
            Chemistry chemistry, double busV, double nominalWh, double solarW, InverterSpec inverter) {
        return new SystemWishes(
                OptionalDouble.of(busV),
                Optional.of(chemistry),
                nominalWh > 0 ? OptionalDouble.of(nominalWh) : OptionalDouble.empty(),
                solarW > 0 ? OptionalDouble.of(solarW) : OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                inverter,
                OptionalDouble.of(0));
    }

    static SystemBrief brief(SystemWishes wishes, double autonomyDays, Stay stay, Load... loads) {
        return new SystemBrief(At.ROOT, List.of(loads),
                Trip.of(stay),
                wishes,
                new Target(OptionalDouble.of(autonomyDays), OptionalDouble.empty()),
                Sampling.OPEN);
    }
}
