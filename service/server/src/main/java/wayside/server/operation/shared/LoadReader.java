package wayside.server.operation.shared;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import wayside.sizing.brief.At;
import wayside.sizing.brief.DutyPoint;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Supply;
import wayside.sizing.brief.Surge;
import wayside.sizing.brief.Tier;
import wayside.sizing.brief.Window;

/** Loads of a request, already held against every rule, as the brief wants them. */
public final class LoadReader {
    private LoadReader() {}

    /** The list that stands there. */
    public static List<Load> read(At at, List<LoadInput> loads) {
        return Given.list(at, loads, LoadReader::read);
    }

    private static Load read(At at, LoadInput load) {
        return new Load(
                at,
                load.name(),
                Given.map(load.supply(), code -> Supply.valueOf(code.name())),
                Given.whole(load.quantity()),
                power(load),
                Given.number(load.hoursPerDay()),
                Given.number(load.dutyCycle()),
                Given.list(at.field("windows"), load.windows(), (there, window) -> window(window)),
                surge(load),
                Given.map(load.tier(), code -> Tier.valueOf(code.name())),
                Given.list(at.field("ambientDuty"), load.ambientDuty(), LoadReader::dutyPoint));
    }

    private static RunningPower power(LoadInput load) {
        return load.powerW() != null
                ? new RunningPower.Watts(load.powerW())
                : new RunningPower.Amps(
                        Objects.requireNonNull(load.currentA()), Objects.requireNonNull(load.voltageV()));
    }

    private static Optional<Surge> surge(LoadInput load) {
        if (load.surgeW() != null) {
            return Optional.of(new Surge.Watts(load.surgeW()));
        }
        return Given.map(load.surgeFactor(), Surge.Factor::new);
    }

    private static DutyPoint dutyPoint(At at, DutyPointInput point) {
        return new DutyPoint(at, point.ambientC(), point.dutyCycle());
    }

    private static Window window(WindowInput window) {
        return new Window(minute(window.from()), minute(window.to()));
    }

    private static int minute(String time) {
        return 60 * Integer.parseInt(time.substring(0, 2)) + Integer.parseInt(time.substring(3));
    }
}
