package wayside.server.operation.recommendation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.AssumptionView;
import wayside.server.answer.CautionView;
import wayside.server.answer.DerivationView;
import wayside.server.answer.EngineView;
import wayside.server.answer.LawView;
import wayside.server.answer.MessageView;
import wayside.server.answer.OpenCodes;
import wayside.server.answer.ShortfallView;
import wayside.server.operation.circuits.CircuitView;
import wayside.server.operation.endurance.BalanceView;
import wayside.server.operation.endurance.ServedLoadView;
import wayside.server.operation.endurance.SmallerSystemView;
import wayside.server.operation.endurance.WhatHelpsView;
import wayside.server.operation.energybudget.EnergyBudgetView;

/** A whole system, or the shortfalls of one that does not fit. */
@Schema(name = "RecommendationAnswer", description = "A whole system, or the shortfalls of one that does not fit.")
public record RecommendationResponse(
        @Schema(description = "Whether nothing is short.") Boolean feasible,
        List<ShortfallView> shortfalls,

        @Schema(description = "What must hold between the parts, each with its margin.")
        List<LawView> laws,

        @Schema(description = "Budget of the stay whose day takes most.")
        EnergyBudgetView energyBudget,

        BatteryView battery,
        List<ChemistryOptionView> byChemistry,
        PowerUnitView powerUnit,

        @Schema(description = "Absent when nothing is left for the sun, or no sun is to be had.") @Nullable
        SolarView solar,

        @Schema(description = "When the trip drives.") @Nullable
        AlternatorView alternator,

        @Schema(description = "When the trip plugs in.") @Nullable
        ShoreView shore,

        @Schema(description = "When there is an AC load.") @Nullable
        InverterChoiceView inverter,

        @Schema(description = "When the DC loads are made for another voltage than the bus.") @Nullable
        ConverterView converter,

        @Schema(description = "Battery first, then outward.")
        List<CircuitView> circuits,

        @Schema(description = "The parts and the cables between them; what a cable carries stands in circuits.")
        GraphView graph,

        @Schema(description = "When there is a hookup or an inverter.") @Nullable
        AcSideView acSide,

        @Schema(
                description =
                        "Mass of batteries, modules, controllers, chargers, inverter and an allowance for cables [kg].")
        Double massKg,

        RuleOfThumbView ruleOfThumb,

        @Schema(description = "When a chance is accepted.") @Nullable
        SizedChanceView chanceOfRunningFlat,

        @Schema(
                description =
                        "Hours of driving each day, beyond the trip as asked, that the system counts on, of those that"
                                + " mayDriveHours allows [h]; absent where it needs none.")
        @Nullable
        Double moreDrivingHoursPerDay,

        @Schema(description = "When a chance is accepted: what each load gets.") @Nullable
        List<ServedLoadView> served,

        @Schema(description = "When a chance is accepted: whether the average day brings in what it takes.") @Nullable
        BalanceView balance,

        @Schema(
                description =
                        "When a chance is accepted and a load is vital: how long the vital loads alone would go on at the lowest"
                                + " that the battery was on any trip that was tried [h].")
        @Nullable
        Double vitalReserveHours,

        @Schema(description = "When a chance is accepted: pairs that are just sure enough, by rising array.") @Nullable
        List<CurvePointView> curve,

        @Schema(description = "When a chance is accepted: what the pair was chosen by.")
        @OpenCodes("objective")
        @Nullable
        String objective,

        @Schema(description = "When a chance is accepted: one change each, the most helpful first.") @Nullable
        List<WhatHelpsView> whatHelps,

        @Schema(
                description =
                        "When a chance is accepted and a smaller battery, by days of autonomy, is not enough for it: with which change to the"
                                + " trip it would be.")
        @Nullable
        SmallerSystemView smallerSystem,

        @Schema(description = "When a chance is accepted: the answer in a sentence.") @Nullable
        MessageView advice,

        List<AssumptionView> assumptions,
        List<CautionView> cautions,
        EngineView engine,

        @Schema(description = "The way to every figure, or to those that were asked for; left out when none was.")
        @Nullable
        DerivationView derivation) {}
