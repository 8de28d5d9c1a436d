package wayside.server.operation.endurance;

import wayside.server.operation.shared.Given;
import wayside.server.operation.shared.LoadReader;
import wayside.server.operation.shared.PlaceReader;
import wayside.server.operation.shared.SamplingReader;
import wayside.server.operation.shared.SystemReader;
import wayside.server.operation.shared.TripReader;
import wayside.sizing.brief.At;
import wayside.sizing.brief.EnduranceBrief;

/** The question of an endurance. */
public final class EnduranceReader {
    private EnduranceReader() {}

    public static EnduranceBrief read(EnduranceRequest request) {
        return read(At.ROOT, request);
    }

    /** The question that stands there. */
    public static EnduranceBrief read(At at, EnduranceRequest request) {
        return new EnduranceBrief(
                at,
                SystemReader.built(at.field("system"), request.system()),
                LoadReader.read(at.field("loads"), request.loads()),
                TripReader.read(at.field("trip"), request.trip()),
                Given.number(request.initialStateOfCharge()),
                PlaceReader.read(at.field("place"), request.place()),
                Given.number(request.acceptedChance()),
                SamplingReader.read(
                        at,
                        request.runs(),
                        request.seed(),
                        request.skyUncertainty(),
                        request.spreadUncertainty(),
                        request.daySpread(),
                        request.yearReading()));
    }
}
