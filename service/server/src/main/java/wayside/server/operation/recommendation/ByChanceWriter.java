package wayside.server.operation.recommendation;

import java.util.List;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.Figures;
import wayside.server.answer.MessageView;
import wayside.server.answer.MessageWriter;
import wayside.server.operation.endurance.BalanceView;
import wayside.server.operation.endurance.EnduranceWriter;
import wayside.server.operation.endurance.ServedLoadView;
import wayside.server.operation.endurance.ServedWriter;
import wayside.server.operation.endurance.SmallerSystemView;
import wayside.server.operation.endurance.WhatHelpsView;
import wayside.sizing.chance.ByChance;
import wayside.sizing.chance.CurvePoint;

/** What a recommendation says of its chance. */
record ByChanceWriter(
        SizedChanceView chance,
        List<ServedLoadView> served,
        BalanceView balance,
        @Nullable Double vitalReserveHours,
        List<CurvePointView> curve,
        String objective,
        List<WhatHelpsView> whatHelps,
        @Nullable SmallerSystemView smallerSystem,
        MessageView advice) {
    static ByChanceWriter of(ByChance found, Figures figures) {
        Figures here = figures.in("chanceOfRunningFlat");
        SizedChanceView chance = new SizedChanceView(
                here.at("value", found.borne().chance().value()),
                here.at("low", found.borne().chance().low()),
                here.at("high", found.borne().chance().high()),
                here.at("whenNew", found.borne().whenNew()),
                here.at("coldLockoutHours", found.borne().coldHours()),
                (int) here.at("runs", found.runs()),
                (int) found.seed());
        return new ByChanceWriter(
                chance,
                ServedWriter.loads(found.borne().served(), figures.in("served")),
                ServedWriter.balance(found.borne().balance(), figures.in("balance")),
                found.borne()
                        .vitalReserveHours()
                        .map(hours -> figures.at("vitalReserveHours", hours))
                        .orElse(null),
                found.curve().stream().map(ByChanceWriter::point).toList(),
                found.objective().code(),
                EnduranceWriter.helps(found.whatHelps(), figures),
                found.smaller()
                        .map(system -> ServedWriter.smaller(system, figures.in("smallerSystem")))
                        .orElse(null),
                MessageWriter.write(found.advice()));
    }

    private static CurvePointView point(CurvePoint point) {
        return new CurvePointView(
                point.nominalEnergyWh(),
                point.solarPowerW(),
                point.engineChargerA().orElse(null),
                point.massKg(),
                point.volumeL(),
                point.price() > 0 ? point.price() : null);
    }
}
