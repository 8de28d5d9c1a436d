package wayside.sizing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Sky;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Trip;

/** Questions in few words, for tests. */
public final class Briefs {
    private static final OptionalDouble OPEN = OptionalDouble.empty();

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
        return wishes(
                OptionalDouble.of(busV),
                Optional.of(chemistry),
                nominalWh > 0 ? OptionalDouble.of(nominalWh) : OPEN,
                solarW > 0 ? OptionalDouble.of(solarW) : OPEN,
                OPEN,
                inverter,
                OptionalDouble.of(0),
                OPEN);
    }

    /** A bank and an array that the customer has, and nothing else said. */
    public static SystemWishes owning(double nominalWh, double solarW) {
        return wishes(
                OPEN,
                Optional.empty(),
                OptionalDouble.of(nominalWh),
                OptionalDouble.of(solarW),
                OPEN,
                InverterSpec.OPEN,
                OPEN,
                OPEN);
    }

    /** An alternator's charger and label, as far as they are known, and nothing else said. */
    public static SystemWishes charging(OptionalDouble alternatorChargerA, OptionalDouble alternatorRatingA) {
        return wishes(
                OPEN, Optional.empty(), OPEN, OPEN, alternatorChargerA, InverterSpec.OPEN, OPEN, alternatorRatingA);
    }

    private static SystemWishes wishes(
            OptionalDouble busVoltageV,
            Optional<Chemistry> chemistry,
            OptionalDouble nominalEnergyWh,
            OptionalDouble solarPowerW,
            OptionalDouble alternatorChargerA,
            InverterSpec inverter,
            OptionalDouble standbyW,
            OptionalDouble alternatorRatingA) {
        At at = At.ROOT.field("system");
        return new SystemWishes(
                at,
                busVoltageV,
                chemistry,
                nominalEnergyWh,
                solarPowerW,
                PanelMount.open(at.field("panel")),
                alternatorChargerA,
                OPEN,
                inverter,
                standbyW,
                BankPlacement.OPEN,
                alternatorRatingA,
                Optional.empty(),
                CircuitLengths.open(at.field("circuitLengthsM")));
    }

    /** A system as it stands, with what is known of its sources. */
    public static BuiltSystem built(
            double busV,
            Chemistry chemistry,
            double nominalWh,
            double solarW,
            PanelMount panel,
            double alternatorA,
            double shoreW,
            OptionalDouble standbyW) {
        return new BuiltSystem(
                At.ROOT.field("system"),
                busV,
                chemistry,
                nominalWh,
                OptionalDouble.of(solarW),
                panel,
                OptionalDouble.of(alternatorA),
                OptionalDouble.of(shoreW),
                InverterSpec.OPEN,
                standbyW);
    }

    /** An inverter of which the rated output is known. */
    public static InverterSpec inverter(double continuousW) {
        return inverter(continuousW, OPEN);
    }

    /** An inverter of which the rated output is known, and perhaps the short-time output. */
    static InverterSpec inverter(double continuousW, OptionalDouble surgeW) {
        return new InverterSpec(At.ROOT.field("inverter"), OptionalDouble.of(continuousW), surgeW, OPEN, OPEN, OPEN);
    }

    static SystemBrief brief(SystemWishes wishes, double autonomyDays, Stay stay, Load... loads) {
        return new SystemBrief(
                At.ROOT,
                List.of(loads),
                Trip.of(stay),
                wishes,
                new Target(OptionalDouble.of(autonomyDays), OptionalDouble.empty()),
                Sampling.OPEN);
    }
}
