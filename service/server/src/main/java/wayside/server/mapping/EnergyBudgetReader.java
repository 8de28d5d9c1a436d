package wayside.server.mapping;

import wayside.server.api.EnergyBudgetRequest;
import wayside.sizing.brief.EnergyBrief;

/** The question of an energy budget. */
public final class EnergyBudgetReader {
    private EnergyBudgetReader() {}

    public static EnergyBrief read(EnergyBudgetRequest request) {
        return new EnergyBrief(
                LoadReader.read(request.loads()),
                Given.number(request.busVoltageV()),
                SystemReader.inverter(request.inverter()),
                Given.number(request.standbyW()),
                Given.number(request.ambientC()));
    }
}
