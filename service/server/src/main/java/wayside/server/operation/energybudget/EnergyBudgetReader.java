package wayside.server.operation.energybudget;

import java.util.List;
import java.util.OptionalDouble;
import wayside.server.operation.shared.Given;
import wayside.server.operation.shared.LoadReader;
import wayside.server.operation.shared.SystemReader;
import wayside.sizing.brief.At;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.Mains;

/** The question of an energy budget. */
public final class EnergyBudgetReader {
    private EnergyBudgetReader() {}

    public static EnergyBrief read(EnergyBudgetRequest request) {
        return read(At.ROOT, request);
    }

    /** The question that stands there. */
    public static EnergyBrief read(At at, EnergyBudgetRequest request) {
        return new EnergyBrief(
                at,
                LoadReader.read(at.field("loads"), request.loads()),
                Given.number(request.busVoltageV()),
                SystemReader.inverter(at.field("inverter"), request.inverter()),
                Given.number(request.standbyW()),
                Given.number(request.ambientC()),
                List.of(),
                Given.number(request.dcLoadsVoltageV()),
                OptionalDouble.empty(),
                Mains.open(at));
    }
}
