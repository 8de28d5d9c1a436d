package wayside.sizing;

import wayside.sizing.brief.DutyPoint;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Surge;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.Trip;

/** What a customer at the counter really lists. Invented, in the trade's usual figures. */
final class RealList {
    private RealList() {}

    static Load[] loads() {
        return new Load[] {
            Load.dc("fridge", 50, 24)
                    .withAmbientDuty(
                            new DutyPoint(20, 0.25),
                            new DutyPoint(25, 0.33),
                            new DutyPoint(32, 0.45),
                            new DutyPoint(40, 0.65))
                    .withSurge(new Surge.Factor(2)),
            Load.dc("fan", 24, 8).times(2),
            Load.dc("light", 5, 5).times(6),
            Load.dc("phone", 10, 2).times(2),
            Load.dc("laptop", 60, 4),
            Load.dc("diesel heater", 20, 8).withSurge(new Surge.Factor(5)),
            Load.ac("induction hob", 1800, 0.4).withDuty(0.7)
        };
    }

    static SystemBrief in(int month) {
        return SystemBrief.of(Trip.of(Stay.of(Place.of(44, 7), month, 7).driving(1)), loads());
    }
}
