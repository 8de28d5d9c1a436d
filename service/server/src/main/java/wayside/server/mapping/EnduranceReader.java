package wayside.server.mapping;

import wayside.server.api.EnduranceRequest;
import wayside.sizing.brief.EnduranceBrief;

/** The question of an endurance. */
public final class EnduranceReader {
    private EnduranceReader() {}

    public static EnduranceBrief read(EnduranceRequest request) {
        Integer seed = request.seed();
        return new EnduranceBrief(
                SystemReader.built(request.system()),
                request.loads().stream().map(LoadReader::read).toList(),
                TripReader.read(request.trip()),
                Given.number(request.initialStateOfCharge()),
                Given.number(request.skyUncertainty()),
                Given.number(request.compartmentOffsetC()),
                Given.number(request.acceptedChance()),
                Given.whole(request.runs()),
                seed == null ? 0 : seed);
    }
}
