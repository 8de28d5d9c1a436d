package wayside.server.operation.circuits;

import java.util.List;
import wayside.server.operation.shared.Given;
import wayside.sizing.brief.At;
import wayside.sizing.brief.CircuitRun;

/** The question about circuits. */
public final class CircuitsReader {
    private CircuitsReader() {}

    public static List<CircuitRun> read(CircuitsRequest request) {
        return Given.list(At.ROOT.field("circuits"), request.circuits(), CircuitReader::read);
    }
}
