package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** How warm the bank is through the trip. */
@Schema(
        name = "BankTemperature",
        description =
                "Temperature of the battery [C], by the hours of stateOfCharge: what 5, 50 and 95 % of the runs do"
                        + " not exceed, to a twenty-fifth of a degree.")
public record BankTemperatureView(List<Double> p05C, List<Double> p50C, List<Double> p95C) {}
