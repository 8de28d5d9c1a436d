package wayside.server.operation.circuits;

import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.OpenCodes;
import wayside.server.answer.ShortfallView;

/** What became of a circuit. */
@Schema(
        name = "SizedCircuit",
        description = "A circuit with its conductor and fuse; or, when feasible is false, with the shortfall instead.")
public record CircuitView(
        @Schema(description = "As in the request.") String name,

        @Schema(description = "How many of this circuit there are, each with its own cable and fuse, when several.")
        @Nullable
        Integer count,

        @Schema(description = "Code of the rule set that it follows. Sets differ widely for one cable.")
        @OpenCodes("rules")
        String rules,

        @Schema(description = "Whether the tables hold a conductor and a fuse for it.")
        Boolean feasible,

        @Schema(description = "What it carries [A].") Double currentA,

        @Schema(
                description =
                        "What its fuse must carry: 1.25 times the current if that flows for three hours or more [A].")
        Double designCurrentA,

        @Schema(description = "One way [m].") Double lengthM,

        @Schema(description = "Length out and back [m]: that which the voltage drop is reckoned with.")
        Double roundTripM,

        @Schema(description = "Nominal voltage [V].") Double voltageV,

        @Schema(
                description =
                        "Highest voltage that it reaches: charging or equalising on its bus, open circuit in the cold on a roof [V]. Its fuse is rated for it.")
        Double highestVoltageV,

        @Schema(description = "Temperature class of the insulation that was reckoned with [C].")
        Double insulationC,

        @Schema(description = "Ambient that was reckoned with [C].")
        Double ambientC,

        @Schema(description = "Current-carrying conductors that were taken to run together.")
        Integer bundledConductors,

        @Schema(description = "Conductor of the gauge series.") @Nullable
        ConductorView conductor,

        @Schema(description = "The metric size that does the same; absent when the largest is not enough.") @Nullable
        MetricConductorView metricConductor,

        @Schema(description = "Fuse at the source.") @Nullable
        FuseView fuse,

        @Schema(description = "Voltage drop of the conductor, both ways [V].") @Nullable
        Double voltageDropV,

        @Schema(description = "Voltage drop in percent of the nominal voltage [%].") @Nullable
        Double voltageDropPercent,

        @Schema(description = "The limit that it had to keep [%].")
        Double voltageDropLimitPercent,

        @Schema(
                description = "What a thinner conductor would not have met: ampacity (the current), fuse (the smallest"
                        + " fuse that carries it), voltage-drop, minimum-size.")
        @OpenCodes("governed-by")
        @Nullable
        String governedBy,

        @Schema(description = "Conductors side by side each way, when one is not enough.") @Nullable
        Integer parallelConductors,

        @Schema(description = "Why it can't be wired, when feasible is false.") @Nullable
        ShortfallView shortfall) {}
