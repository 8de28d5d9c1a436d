package wayside.server.mapping;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import wayside.server.api.DutyPointInput;
import wayside.server.api.LoadInput;
import wayside.server.api.SupplyCode;
import wayside.server.api.WindowInput;
import wayside.sizing.brief.DutyPoint;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Supply;
import wayside.sizing.brief.Surge;
import wayside.sizing.brief.Window;

/** Loads of a request, already held against every rule, as the brief wants them. */
public final class LoadReader {
    private LoadReader() {}

    public static List<Load> read(List<LoadInput> loads) {
        return loads.stream().map(LoadReader::read).toList();
    }

    public static Load read(LoadInput load) {
        return new Load(
                load.name(),
                load.supply() == SupplyCode.AC ? Supply.AC : Supply.DC,
                load.quantity() == null ? 1 : load.quantity(),
                power(load),
                Given.number(load.hoursPerDay()),
                Given.number(load.dutyCycle()),
                load.windows() == null
                        ? List.of()
                        : load.windows().stream().map(LoadReader::window).toList(),
                surge(load),
                load.essential() == null || load.essential(),
                load.ambientDuty() == null
                        ? List.of()
                        : load.ambientDuty().stream().map(LoadReader::dutyPoint).toList());
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

    private static DutyPoint dutyPoint(DutyPointInput point) {
        return new DutyPoint(point.ambientC(), point.dutyCycle());
    }

    private static Window window(WindowInput window) {
        return new Window(minute(window.from()), minute(window.to()));
    }

    private static int minute(String time) {
        return 60 * Integer.parseInt(time.substring(0, 2)) + Integer.parseInt(time.substring(3));
    }
}
