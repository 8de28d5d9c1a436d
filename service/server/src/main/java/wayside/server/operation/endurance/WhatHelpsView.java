package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.MessageParameterView;
import wayside.server.answer.OpenCodes;

/** One change and what it does. */
@Schema(
        name = "WhatHelps",
        description = "One change to the system or the trip, all else as it is, and the chance of running flat with it."
                + " Less of a load is less of its power; an inverter that was left open stays as it was chosen.")
public record WhatHelpsView(
        @Schema(description = "Stable, kebab-case.", example = "more-panel") @OpenCodes("change")
        String code,

        @Schema(description = "The change in English.") String text,

        @Schema(
                description =
                        "What the message is about, by name. The list of codes says which parameters each code has.")
        Map<String, MessageParameterView> parameters,

        @Schema(description = "Chance of running flat with the change [share].")
        Double chanceOfRunningFlat,

        @Schema(description = "Without it, in the same runs [share].")
        Double chanceWithoutChange,

        SparedChanceView spared,

        @Schema(
                description =
                        "Mass of the part that it adds to a recommendation [kg]; absent where it is a habit, and for a system that stands.")
        @Nullable
        Double addedMassKg) {}
