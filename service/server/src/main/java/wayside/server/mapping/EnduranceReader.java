package wayside.server.mapping;

import wayside.server.api.EnduranceRequest;
import wayside.sizing.brief.EnduranceBrief;

/** The question of an endurance. */
public final class EnduranceReader {
    private EnduranceReader() {}

    public static EnduranceBrief read(EnduranceRequest request) {
        return new EnduranceBrief(
                SystemReader.built(request.system()),
                request.loads().stream().map(LoadReader::read).toList(),
                TripReader.read(request.trip()),
                Given.number(request.initialStateOfCharge()),
                Given.number(request.compartmentOffsetC()),
                Given.number(request.acceptedChance()),
                SamplingReader.read(
                        request.runs(),
                        request.seed(),
                        request.skyUncertainty(),
                        request.spreadUncertainty(),
                        request.daySpread(),
                        request.yearReading()));
    }
}
