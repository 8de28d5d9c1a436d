package wayside.server.http;

import java.util.List;
import java.util.stream.Stream;
import wayside.server.answer.CsvTable;
import wayside.server.answer.Figures;
import wayside.server.contract.Endpoint;
import wayside.server.operation.about.ServiceView;
import wayside.server.operation.circuits.CircuitView;
import wayside.server.operation.circuits.CircuitsReader;
import wayside.server.operation.circuits.CircuitsRequest;
import wayside.server.operation.circuits.CircuitsResponse;
import wayside.server.operation.circuits.CircuitsWriter;
import wayside.server.operation.endurance.EnduranceReader;
import wayside.server.operation.endurance.EnduranceRequest;
import wayside.server.operation.endurance.EnduranceResponse;
import wayside.server.operation.endurance.EnduranceWriter;
import wayside.server.operation.energybudget.EnergyBudgetReader;
import wayside.server.operation.energybudget.EnergyBudgetRequest;
import wayside.server.operation.energybudget.EnergyBudgetResponse;
import wayside.server.operation.energybudget.EnergyBudgetWriter;
import wayside.server.operation.rechargetime.ChargePointView;
import wayside.server.operation.rechargetime.RechargeTimeReader;
import wayside.server.operation.rechargetime.RechargeTimeRequest;
import wayside.server.operation.rechargetime.RechargeTimeResponse;
import wayside.server.operation.rechargetime.RechargeTimeWriter;
import wayside.server.operation.recommendation.CurvePointView;
import wayside.server.operation.recommendation.RecommendationReader;
import wayside.server.operation.recommendation.RecommendationRequest;
import wayside.server.operation.recommendation.RecommendationResponse;
import wayside.server.operation.recommendation.RecommendationWriter;
import wayside.server.operation.reference.ReferenceList;
import wayside.server.operation.reference.ReferenceTableView;
import wayside.server.operation.solaryield.SolarYieldOfYearRequest;
import wayside.server.operation.solaryield.SolarYieldReader;
import wayside.server.operation.solaryield.SolarYieldRequest;
import wayside.server.operation.solaryield.SolarYieldResponse;
import wayside.server.operation.solaryield.SolarYieldWriter;
import wayside.server.operation.solaryield.YieldMonthView;
import wayside.sizing.CircuitSizer;
import wayside.sizing.EnduranceSimulator;
import wayside.sizing.EnergyBudgetSizer;
import wayside.sizing.RechargeSizer;
import wayside.sizing.SolarYieldSizer;
import wayside.sizing.SystemSizer;
import wayside.sizing.solar.epw.TypicalYear;

/** The operations of a service, from which its routes and the paths of the contract are made. */
public final class Operations {
    static final Endpoint REFERENCE_LIST = new Endpoint(
            "GET",
            "/v1/reference",
            "reference",
            "The tables behind the figures",
            "Names every table that the figures rest on.",
            null,
            null,
            ReferenceList.class,
            List.of(),
            null,
            0);

    static final Endpoint REFERENCE_TABLE = new Endpoint(
            "GET",
            "/v1/reference/{folder}/{table}",
            "reference-table",
            "A table behind the figures",
            "A published table, or one of the trade's own figures, with its source.",
            null,
            null,
            ReferenceTableView.class,
            List.of("folder", "table"),
            null,
            0);

    static final Endpoint SERVICE = new Endpoint(
            "GET",
            "/v1",
            "service",
            "What answers here",
            "Says which engine runs, where its contract is and what it can be asked.",
            null,
            null,
            ServiceView.class,
            List.of(),
            null,
            0);

    private final List<Operation<?, ?>> all;

    private Operations(List<Operation<?, ?>> all) {
        this.all = all;
    }

    /** Those of this service. What one of them needs besides its request is handed in here. */
    public static Operations standard() {
        return new Operations(
                List.of(recommendation(), endurance(), energyBudget(), circuits(), solarYield(), rechargeTime()));
    }

    private static Operation<RecommendationRequest, RecommendationResponse> recommendation() {
        return Operation.of(
                        "recommendation",
                        "A whole system for a list of loads and a trip",
                        "Sizes battery, array, chargers, inverter, cables and fuses; a system that does not fit is answered"
                                + " with its shortfalls.",
                        RecommendationRequest.class,
                        RecommendationResponse.class,
                        RecommendationReader::read,
                        SystemSizer::size,
                        RecommendationWriter::write)
                .pricedBy(Price::of, 600)
                .withTable(new CsvTable<>(
                        "curve",
                        CurvePointView.class,
                        RecommendationResponse::curve,
                        "With target.chanceOfRunningFlat: the pairs of battery and array that are just sure enough."));
    }

    private static Operation<EnduranceRequest, EnduranceResponse> endurance() {
        return Operation.of(
                        "endurance",
                        "How often a system runs flat on a trip",
                        "Simulates the trip hour by hour in many runs, each in a random weather of its own.",
                        EnduranceRequest.class,
                        EnduranceResponse.class,
                        EnduranceReader::read,
                        EnduranceSimulator::simulate,
                        EnduranceWriter::write)
                .pricedBy(Price::of, 600)
                .withYear(EnduranceRequest.class, Price::of, Operations::enduranceOfYear);
    }

    private static Operation<EnergyBudgetRequest, EnergyBudgetResponse> energyBudget() {
        return Operation.of(
                        "energy-budget",
                        "What a usual day takes out of the battery",
                        "Adds up the loads, the standby draw and the inverter's losses of a day.",
                        EnergyBudgetRequest.class,
                        EnergyBudgetResponse.class,
                        EnergyBudgetReader::read,
                        EnergyBudgetSizer::size,
                        EnergyBudgetWriter::write)
                .pricedBy(Price::of, 20);
    }

    private static Operation<CircuitsRequest, CircuitsResponse> circuits() {
        return Operation.of(
                        "circuits",
                        "Conductors and fuses",
                        "Sizes the conductor and the fuse of each circuit by a named rule set.",
                        CircuitsRequest.class,
                        CircuitsResponse.class,
                        CircuitsReader::read,
                        CircuitSizer::size,
                        CircuitsWriter::write)
                .pricedBy(Price::of, 30)
                .withTable(new CsvTable<>(
                        "circuits", CircuitView.class, CircuitsResponse::circuits, "Conductor and fuse of each."));
    }

    private static Operation<SolarYieldRequest, SolarYieldResponse> solarYield() {
        return Operation.of(
                        "solar-yield",
                        "What an array brings, month by month",
                        "Carries the sun of each month onto the panels and through their heat and losses; checks the strings.",
                        SolarYieldRequest.class,
                        SolarYieldResponse.class,
                        SolarYieldReader::read,
                        SolarYieldSizer::size,
                        SolarYieldWriter::write)
                .withTable(new CsvTable<>(
                        "months", YieldMonthView.class, SolarYieldResponse::months, "What each month brings."))
                .withYear(SolarYieldOfYearRequest.class, request -> Price.LIGHT, Operations::solarYieldOfYear);
    }

    private static Operation<RechargeTimeRequest, RechargeTimeResponse> rechargeTime() {
        return Operation.of(
                        "recharge-time",
                        "How long a battery takes to fill",
                        "Charges with all sources at once against what the battery accepts: always longer than energy divided"
                                + " by power.",
                        RechargeTimeRequest.class,
                        RechargeTimeResponse.class,
                        RechargeTimeReader::read,
                        RechargeSizer::size,
                        RechargeTimeWriter::write)
                .withTable(new CsvTable<>(
                        "curve", ChargePointView.class, RechargeTimeResponse::curve, "How the bank fills."));
    }

    private static SolarYieldResponse solarYieldOfYear(
            SolarYieldOfYearRequest request, TypicalYear year, Figures figures) {
        return SolarYieldWriter.write(
                SolarYieldSizer.size(SolarYieldReader.read(request, year.place()), year), figures);
    }

    private static EnduranceResponse enduranceOfYear(EnduranceRequest request, TypicalYear year, Figures figures) {
        return EnduranceWriter.write(EnduranceSimulator.simulate(EnduranceReader.read(request), year), figures);
    }

    List<Operation<?, ?>> all() {
        return all;
    }

    /** All endpoints of the contract, in the order of the document. */
    public List<Endpoint> endpoints() {
        return Stream.concat(
                        all.stream().<Endpoint>map(Operation::endpoint),
                        Stream.of(REFERENCE_LIST, REFERENCE_TABLE, SERVICE))
                .toList();
    }
}
