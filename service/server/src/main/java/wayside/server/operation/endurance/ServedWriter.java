package wayside.server.operation.endurance;

import java.util.ArrayList;
import java.util.List;
import wayside.server.answer.Figures;
import wayside.server.answer.MessageView;
import wayside.server.answer.MessageWriter;
import wayside.server.operation.shared.TierCode;
import wayside.sizing.brief.Tier;
import wayside.sizing.chance.SmallerSystem;
import wayside.sizing.chance.TripChange;
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

    public static SmallerSystemView smaller(SmallerSystem system, Figures figures) {
        List<TripChangeView> changes = new ArrayList<>();
        for (TripChange change : system.changes()) {
            Figures here = figures.in("changes").entry(changes.size());
            MessageView message = MessageWriter.write(change.change());
            changes.add(new TripChangeView(
                    message.code(),
                    message.text(),
                    message.parameters(),
                    here.at("chanceOfRunningFlat", change.chance()),
                    change.chanceOneStepLess()
                            .map(less -> here.at("chanceOneStepLess", less))
                            .orElse(null)));
        }
        return new SmallerSystemView(
                figures.at("nominalEnergyWh", system.nominalEnergyWh()),
                figures.at("solarPowerW", system.solarPowerW()),
                system.engineChargerA()
                        .map(current -> figures.at("alternatorChargerA", current))
                        .orElse(null),
                changes);
    }

    public static BalanceView balance(EnergyBalance balance, Figures figures) {
        return new BalanceView(
                figures.at("dailyWh", balance.dailyWh()),
                balance.emptyAfterNights()
                        .map(nights -> figures.at("emptyAfterNights", nights))
                        .orElse(null));
    }
}
