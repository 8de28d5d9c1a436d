package wayside.server.operation.rechargetime;

import java.util.ArrayList;
import java.util.List;
import wayside.server.answer.Figures;
import wayside.server.answer.ShortfallWriter;
import wayside.server.answer.Tail;
import wayside.sizing.recharge.Recharge;
import wayside.sizing.trace.Answer;

/** The answer of a recharge. */
public final class RechargeTimeWriter {
    private RechargeTimeWriter() {}

    public static RechargeTimeResponse write(Answer<Recharge> answer, Figures figures) {
        Recharge recharge = answer.result();
        var shortfalls = ShortfallWriter.list(recharge.shortfalls(), figures.in("shortfalls"));
        Double hours = recharge.hours().map(h -> figures.at("hours", h)).orElse(null);
        Double plain = recharge.plainDivisionHours()
                .map(h -> figures.at("plainDivisionHours", h))
                .orElse(null);
        double power = figures.at("powerW", recharge.powerW());
        double accepted = figures.at("acceptedW", recharge.acceptedW());
        List<SourceShareView> sources = sources(recharge, figures);
        List<ChargePointView> curve = recharge.curve().stream()
                .map(point -> new ChargePointView(point.hour(), point.stateOfCharge(), point.powerW()))
                .toList();
        Tail tail = Tail.of(answer, figures);
        return new RechargeTimeResponse(
                recharge.feasible(),
                shortfalls,
                hours,
                plain,
                power,
                accepted,
                sources,
                curve,
                tail.assumptions(),
                tail.cautions(),
                tail.engine(),
                tail.derivation());
    }

    private static List<SourceShareView> sources(Recharge recharge, Figures figures) {
        List<SourceShareView> views = new ArrayList<>();
        for (Recharge.Share share : recharge.shares()) {
            Figures here = figures.in("sources").entry(views.size());
            views.add(new SourceShareView(
                    share.source(), here.at("powerW", share.powerW()), here.at("energyWh", share.energyWh())));
        }
        return views;
    }
}
