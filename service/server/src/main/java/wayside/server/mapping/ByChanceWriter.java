package wayside.server.mapping;

import java.util.List;
import wayside.server.api.CurvePointView;
import wayside.server.api.MessageView;
import wayside.server.api.SizedChanceView;
import wayside.server.api.WhatHelpsView;
import wayside.sizing.chance.ByChance;
import wayside.sizing.chance.CurvePoint;

/** What a recommendation says of its chance. */
record ByChanceWriter(
        SizedChanceView chance,
        List<CurvePointView> curve,
        String objective,
        List<WhatHelpsView> whatHelps,
        MessageView advice) {
    static ByChanceWriter of(ByChance found, Figures figures) {
        Figures here = figures.in("chanceOfRunningFlat");
        SizedChanceView chance = new SizedChanceView(
                here.at("value", found.chance().value()),
                here.at("low", found.chance().low()),
                here.at("high", found.chance().high()),
                here.at("coldLockoutHours", found.coldHours()),
                (int) here.at("runs", found.runs()),
                (int) found.seed());
        return new ByChanceWriter(
                chance,
                found.curve().stream().map(ByChanceWriter::point).toList(),
                found.objective().code(),
                EnduranceWriter.helps(found.whatHelps(), figures),
                MessageWriter.write(found.advice()));
    }

    private static CurvePointView point(CurvePoint point) {
        return new CurvePointView(
                point.nominalEnergyWh(),
                point.solarPowerW(),
                point.massKg(),
                point.volumeL(),
                point.price() > 0 ? point.price() : null);
    }
}
