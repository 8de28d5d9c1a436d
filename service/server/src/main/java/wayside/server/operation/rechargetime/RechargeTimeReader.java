package wayside.server.operation.rechargetime;

import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.operation.shared.Given;
import wayside.server.operation.shared.SystemReader;
import wayside.sizing.brief.At;
import wayside.sizing.brief.ChargingKind;
import wayside.sizing.brief.RechargeBrief;

/** The question of a recharge. */
public final class RechargeTimeReader {
    private RechargeTimeReader() {}

    public static RechargeBrief read(RechargeTimeRequest request) {
        return read(At.ROOT, request);
    }

    /** The question that stands there. */
    public static RechargeBrief read(At at, RechargeTimeRequest request) {
        return new RechargeBrief(
                at,
                SystemReader.built(at.field("system"), request.system()),
                Given.number(request.fromStateOfCharge()),
                Given.number(request.toStateOfCharge()),
                sources(request.sources()),
                Given.number(request.sunShare()),
                Given.number(request.ambientC()),
                Given.number(request.loadW()));
    }

    private static List<ChargingKind> sources(@Nullable List<SourceCode> sources) {
        return sources == null
                ? List.of()
                : sources.stream()
                        .map(code -> ChargingKind.valueOf(code.name()))
                        .toList();
    }
}
