package wayside.server.operation.endurance;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.AssumptionView;
import wayside.server.answer.CautionView;
import wayside.server.answer.DerivationView;
import wayside.server.answer.EngineView;
import wayside.server.answer.LawView;
import wayside.server.answer.MessageView;

/** How a system lasts on a trip. */
@Schema(name = "EnduranceAnswer", description = "How a system lasts on a trip.")
public record EnduranceResponse(
        @Schema(description = "The answer in a sentence or two.")
        MessageView advice,

        ChanceView chanceOfRunningFlat,

        @Schema(description = "What must hold between the parts of the system, each with its margin.")
        List<LawView> laws,

        @Schema(description = "How often the trip was lived.")
        Integer runs,

        @Schema(description = "Seed of the random weather.") Integer seed,

        @Schema(description = "Essential energy that goes short on a trip, mean [Wh].")
        Double expectedUnmetWh,

        @Schema(description = "Hours in which vital or essential loads go short, mean [h].")
        Double expectedUnmetHours,

        @Schema(description = "Energy of other loads that is shed, mean [Wh].")
        Double shedWh,

        @Schema(
                description =
                        "The chance of running flat once the battery is old: at the share of its rated energy that its chemistry ends"
                                + " its life with.")
        Double chanceWhenOld,

        @Schema(description = "What each load gets.") List<ServedLoadView> served,

        @Schema(description = "Whether the average day brings in what it takes.")
        BalanceView balance,

        StateOfChargeView stateOfCharge,
        BankTemperatureView bankTemperature,
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

        List<AssumptionView> assumptions,
        List<CautionView> cautions,
        EngineView engine,

        @Schema(description = "The way to every figure, or to those that were asked for; left out when none was.")
        @Nullable
        DerivationView derivation) {}
