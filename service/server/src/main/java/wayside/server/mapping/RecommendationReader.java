package wayside.server.mapping;

import wayside.server.api.RecommendationRequest;
import wayside.sizing.brief.SystemBrief;

/** The question of a recommendation. */
public final class RecommendationReader {
    private RecommendationReader() {}

    public static SystemBrief read(RecommendationRequest request) {
        return new SystemBrief(
                LoadReader.read(request.loads()),
                TripReader.read(request.trip()),
                SystemReader.wishes(request.system(), request.compartmentOffsetC()),
                SystemReader.target(request.target()),
                SamplingReader.read(
                        request.runs(),
                        request.seed(),
                        request.skyUncertainty(),
                        request.spreadUncertainty(),
                        request.daySpread(),
                        null));
    }
}
