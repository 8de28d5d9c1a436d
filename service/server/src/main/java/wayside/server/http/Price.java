package wayside.server.http;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import wayside.server.operation.circuits.CircuitsRequest;
import wayside.server.operation.endurance.EnduranceRequest;
import wayside.server.operation.energybudget.EnergyBudgetRequest;
import wayside.server.operation.recommendation.RecommendationRequest;
import wayside.server.operation.shared.StayInput;
import wayside.server.problem.Fault;
import wayside.server.problem.FaultCode;
import wayside.server.problem.Faults;
import wayside.server.problem.Problem;

/**
 * How long a request is likely to take, in ms of one core, from its size alone: said in a header and used to share out the
 * cores. Fitted to this service on a usual core, to within a factor of two; only the ratios matter.
 */
final class Price {
    /** Of what is asked in passing. */
    static final double LIGHT = 1;

    /** Up to here a request is worked on in its turn; above it waits among the long ones. */
    static final double MOST_LIGHT = 20;

    private static final int USUAL_RUNS = 2000;
    private static final double LONG = 20;
    private static final double PER_LOAD_AND_STAY = 0.01;
    private static final double PER_STAY = 2;

    private Price() {}

    static double of(EnergyBudgetRequest request) {
        return LIGHT + 0.07 * request.loads().size();
    }

    static double of(CircuitsRequest request) {
        return LIGHT + 0.12 * request.circuits().size();
    }

    static double of(RecommendationRequest request) {
        int stays = request.trip().stays().size();
        int loads = request.loads().size();
        if (request.target() == null || request.target().chanceOfRunningFlat() == null) {
            return 3 + 0.1 * stays + 0.01 * loads + 0.0025 * stays * loads;
        }
        // Pairs of bank and array are tried in some of the runs, and the one that is found is confirmed in all.
        double hours = hours(request.trip().stays());
        double searched = Math.min(hours, 400);
        double confirmed = Math.min(hours * runs(request.runs()) / 1000, 4000);
        return LONG + 0.4 * searched + 0.035 * confirmed + PER_STAY * stays + PER_LOAD_AND_STAY * stays * loads;
    }

    static double of(EnduranceRequest request) {
        int stays = request.trip().stays().size();
        int loads = request.loads().size();
        double thousandHours = hours(request.trip().stays()) * runs(request.runs()) / 1000;
        // What helps and what it carries is tried in at most two million hours.
        return LONG
                + 0.05 * Math.min(thousandHours, 2000)
                + 0.011 * thousandHours
                + PER_STAY * stays
                + PER_LOAD_AND_STAY * stays * loads;
    }

    /** What is told of a request that costs more than this service takes. */
    static Problem tooHigh(double price, int mostMs) {
        Faults faults = new Faults();
        faults.add("", () -> Fault.of(
                        "",
                        FaultCode.OUT_OF_RANGE,
                        "This would take too long here; ask with fewer nights, stays, loads or runs.")
                .received(
                        String.format(Locale.ROOT, "a request of %.0f ms of a core", Math.ceil(price)),
                        Math.ceil(price))
                .accepted("a request of at most " + mostMs + " ms of a core")
                .between(null, (double) mostMs)
                .done());
        return Problem.of(faults);
    }

    private static int runs(@Nullable Integer given) {
        return given == null ? USUAL_RUNS : given;
    }

    private static double hours(List<@Nullable StayInput> stays) {
        int nights = 0;
        for (StayInput stay : stays) {
            nights += stay == null || stay.nights() == null ? 1 : stay.nights();
        }
        return 24.0 * nights;
    }
}
