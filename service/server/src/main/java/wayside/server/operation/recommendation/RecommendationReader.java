package wayside.server.operation.recommendation;

import wayside.server.operation.shared.LoadReader;
import wayside.server.operation.shared.PlaceReader;
import wayside.server.operation.shared.SamplingReader;
import wayside.server.operation.shared.SystemReader;
import wayside.server.operation.shared.TripReader;
import wayside.sizing.brief.At;
import wayside.sizing.brief.SystemBrief;

/** The question of a recommendation. */
public final class RecommendationReader {
    private RecommendationReader() {}

    public static SystemBrief read(RecommendationRequest request) {
        return read(At.ROOT, request);
    }

    /** The question that stands there. */
    public static SystemBrief read(At at, RecommendationRequest request) {
        return new SystemBrief(
                at,
                LoadReader.read(at.field("loads"), request.loads()),
                TripReader.read(at.field("trip"), request.trip()),
                SystemReader.wishes(
                        at.field("system"), request.system(), PlaceReader.read(at.field("place"), request.place())),
                SystemReader.target(at.field("target"), request.target()),
                SamplingReader.read(
                        at,
                        request.runs(),
                        request.seed(),
                        request.skyUncertainty(),
                        request.spreadUncertainty(),
                        request.daySpread(),
                        null));
    }
}
