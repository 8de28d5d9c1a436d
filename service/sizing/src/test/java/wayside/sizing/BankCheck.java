package wayside.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import wayside.sizing.brief.Chemistry;

/**
 * Whether a bank bears what hangs on it, judged with formulas and constants of its own. Common practice, no source: the rates,
 * A for each Ah, and the lowest volts of a 12 V pack under load; 0.01786 ohm mm2/m is the 1/56 of the German trade.
 */
final class BankCheck {
    private static final double HOUSE_LIMIT_PERCENT = 3;
    private static final double OHM_MM2_PER_M = 1 / 56.0;

    private final BuiltDesign design;
    private final double statedOutA;
    private final double statedInA;
    private final List<String> found = new ArrayList<>();

    private BankCheck(BuiltDesign design, double statedOutA, double statedInA) {
        this.design = design;
        this.statedOutA = statedOutA;
        this.statedInA = statedInA;
    }

    /**
     * @param dcW and
     * @param acW of loads that may run together
     * @param setting that the answer gives the charge controllers, together [A]
     * @param frozen whether every hour of the trip is below freezing
     * @param stated what the maker lets out of the bank and into it, both 0 where that is not known [A]
     */
    static List<String> of(
            BuiltDesign design, double dcW, double acW, OptionalDouble setting, boolean frozen, double... stated) {
        BankCheck check = new BankCheck(design, stated.length > 0 ? stated[0] : 0, stated.length > 1 ? stated[1] : 0);
        check.discharge(dcW + acW);
        check.charge(setting);
        check.drop();
        check.expect(!frozen || !design.chemistry().equals(Chemistry.LFP), "charged in frost");
        return check.found;
    }

    private void discharge(double watts) {
        double lowestV =
                switch (design.chemistry()) {
                    case LFP -> design.busV();
                    case NMC -> design.busV() == 12 ? 12 : 0.875 * design.busV(); // 4, 7 or 14 cells of 3.0 V
                    default -> 0.875 * design.busV();
                };
        double perAh =
                switch (design.chemistry()) {
                    case LFP, NMC -> 1;
                    case GEL -> 0.3;
                    case AGM -> 0.5;
                    case FLOODED -> 0.25;
                };
        double outA = statedOutA > 0 ? statedOutA : perAh * design.capacityAh();
        expect(watts / lowestV <= outA * 1.001, "drawn too hard");
    }

    private void charge(OptionalDouble setting) {
        double perAh =
                switch (design.chemistry()) {
                    case LFP -> 0.8;
                    case NMC -> 0.7;
                    case AGM -> 0.3;
                    case GEL -> 0.2;
                    case FLOODED -> 0.25;
                };
        double sunA = Math.min(
                design.array().controllers() * design.array().controllerA(),
                design.array().powerW() / chargingV());
        double intoA = setting.orElse(sunA) + design.chargerA();
        double mostA = statedInA > 0 ? statedInA : perAh * design.capacityAh();
        expect(intoA <= mostA * 1.001, "charged too hard");
    }

    /** Most of a charge runs at about 3.9 V a cell of NMC; packs of the others end at 14.4 V or a little above. */
    private double chargingV() {
        boolean fourCells = design.chemistry() == Chemistry.NMC && design.busV() == 12;
        return design.busV() / 12 * (fourCells ? 15.6 : 14.6);
    }

    private void drop() {
        double main = percent(FireCheck.BATTERY) + percent(FireCheck.MAIN);
        expect(main + percent("inverter") <= HOUSE_LIMIT_PERCENT * 1.15, "drop to the inverter");
        expect(main + percent("distribution") <= HOUSE_LIMIT_PERCENT * 1.15, "drop to the loads");
    }

    private double percent(String name) {
        return design.cables().stream()
                .filter(cable -> cable.name().equals(name))
                .mapToDouble(cable ->
                        100 * cable.currentA() * 2 * cable.lengthM() * OHM_MM2_PER_M / cable.mm2() / design.busV())
                .sum();
    }

    private void expect(boolean holds, String what) {
        if (!holds) {
            found.add(what);
        }
    }
}
