package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How a system lasts on a trip. */
@Schema(description = "How a system lasts on a trip.")
public record EnduranceResponse(
        @Schema(description = "The answer in a sentence or two.")
        String advice,

        ChanceView chanceOfRunningFlat,

        @Schema(description = "How often the trip was lived.")
        Integer runs,

        @Schema(description = "Of the random weather.") Integer seed,

        @Schema(description = "Essential energy that goes short on a trip, mean [Wh].")
        Double expectedUnmetWh,

        @Schema(description = "Hours in which essential loads go short, mean [h].")
        Double expectedUnmetHours,

        @Schema(description = "Energy of other loads that is shed, mean [Wh].")
        Double shedWh,

        StateOfChargeView stateOfCharge,
        EnergySourcesView sources,
        EnergyUsesView uses,

        @Schema(description = "The largest miss in the books of any life [Wh].")
        Double balanceErrorWh,

        @Schema(description = "What the sun offered and nobody took, mean [Wh].")
        Double surplusWh,

        CyclesView cycles,

        @Schema(description = "Hours in which charge was on offer and the cold kept it out, mean [h].")
        Double coldLockoutHours,

        @Schema(description = "What the battery would have taken in them, mean [Wh].")
        Double coldLockoutWh,

        WorstRunView worstRun,
        InverseView inverse,

        @Schema(
                description =
                        "How many of the runs the load factor and what helps are tried in, from the first on: all,"
                                + " or what two million simulated hours allow. Asking with so many runs gives the same figures.")
        Integer comparedRuns,

        @Schema(description = "One change each, in the same weathers, the most helpful first.")
        List<WhatHelpsView> whatHelps,

        @Schema(description = "Left out when return=minimal is preferred.") @Nullable
        List<StepView> derivation,

        List<AssumptionView> assumptions,
        List<CautionView> cautions,

        @Schema(
                description = "For a figure, by its JSON Pointer in this answer, the id of its step; left out with the"
                        + " derivation.")
        @Nullable
        Map<String, String> steps) {}
