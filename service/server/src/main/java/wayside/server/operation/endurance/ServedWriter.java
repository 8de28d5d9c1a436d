package wayside.server.operation.endurance;

import java.util.ArrayList;
import java.util.List;
import wayside.server.answer.Figures;
import wayside.server.operation.shared.TierCode;
import wayside.sizing.brief.Tier;
import wayside.sizing.endurance.EnergyBalance;
import wayside.sizing.endurance.Served;
import wayside.sizing.endurance.ServedLoad;

/** What the loads get, and whether the day is balanced. */
public final class ServedWriter {
    private ServedWriter() {}

    public static List<ServedLoadView> loads(Served served, Figures figures) {
        List<ServedLoadView> views = new ArrayList<>();
        for (ServedLoad load : served.loads()) {
            Figures here = figures.entry(views.size());
            views.add(new ServedLoadView(
                    load.load().name(),
                    TierCode.valueOf(load.load().tier().orElse(Tier.ESSENTIAL).name())
                            .code(),
                    here.at("energyShare", load.energyShare()),
                    here.at("fullNights", load.fullNights()),
                    served.nights()));
        }
        return views;
    }

    public static BalanceView balance(EnergyBalance balance, Figures figures) {
        return new BalanceView(
                figures.at("dailyWh", balance.dailyWh()),
                balance.emptyAfterNights()
                        .map(nights -> figures.at("emptyAfterNights", nights))
                        .orElse(null));
    }
}
