package wayside.sizing;

import java.util.ArrayList;
import java.util.List;

/**
 * What could burn in a design, judged with formulas and constants of its own.
 *
 * <p>Sources: NFPA 70-2020, 690.8(A)(1) and 690.9(A)(1) and (B)(1), strings; ABYC E-11, Table V.A and its rule for large
 * banks, as reprinted; 45 mOhm for each Ah of an LFP cell (a maker's limit for 60 Ah cells, as quoted), 25.6 A for each Ah of
 * a sealed and 11.7 A of a flooded battery (measured and recalled figures of the trade), gel and NMC without a source; 0.05
 * mOhm a joint, from memory;
 * 0.01786 ohm mm2/m, the 1/56 of the German trade. Cells in series and the highest charging volts of the packs as printed in
 * the trade: 14.6, 14.7, 14.5, 16.8 V, from memory 2.6 V a cell for equalising. Alternators are rated at 13.5 and 27 V (ISO
 * 8854, as quoted) and give half of that without harm (common practice, no source).
 */
final class FireCheck {
    static final String VEHICLE_SIDE = "starter battery to alternator charger";
    static final String STRING = "string of modules";
    static final String ARRAY = "array to charge controller";
    static final String MAIN = "battery main";
    static final String BATTERY = "each battery";
    static final String DISTRIBUTION = "distribution";

    /** Less than any fuse breaks; converters of the trade limit to little more than their rating (from memory). */
    private static final double CONVERTER_SHORT_A = 100;

    private static final double JOINT_OHM = 0.00005;
    private static final double MODULE_OPEN_V = 22;
    private static final double SHORT_CIRCUIT_A_OF_100_W = 6;
    private static final double LARGEST_SERIES_FUSE_A = 15;

    private final BuiltDesign design;
    private final List<String> found = new ArrayList<>();

    private FireCheck(BuiltDesign design) {
        this.design = design;
    }

    /** What is wrong, each in a few words; empty when nothing is. */
    static List<String> of(BuiltDesign design) {
        FireCheck check = new FireCheck(design);
        design.cables().forEach(check::cable);
        check.alternator();
        check.batteries();
        if (design.array().powerW() > 0) {
            check.strings();
            check.controllers();
        }
        return check.found;
    }

    private void cable(BuiltDesign.Cable cable) {
        expect(cable.fuseV() >= highestV(cable.name()) - 1e-6, cable.name() + ": fuse volts");
        expect(cable.breaksA() >= shortA(cable) || cable.toBeConfirmed(), cable.name() + ": fuse breaks too little");
        expect(cable.fuseA() >= cable.currentA() - 1e-6, cable.name() + ": fuse below its current");
        expect(!cable.blade() || outlasts(cable), cable.name() + ": burns before its fuse opens");
    }

    /**
     * Onderdonk's formula, area in circular mils, for the 5 s of a small blade at twice its rating and the second of a large one at
     * six times; PVC bears 160 C, cross-linked kinds 250 C, silicone 350 C.
     */
    private static boolean outlasts(BuiltDesign.Cable cable) {
        double hottestC = cable.insulationC() <= 105 ? 160 : cable.insulationC() <= 150 ? 250 : 350;
        double seconds = cable.fuseA() <= 40 ? 5 : 1;
        double amperes = cable.fuseA() * (cable.fuseA() <= 40 ? 2 : 6);
        double rise = (hottestC - cable.insulationC()) / (234 + cable.insulationC());
        double borneA = cable.thinMm2() / 0.000506707 * Math.sqrt(Math.log10(1 + rise) / (33 * seconds));
        return borneA >= 0.99 * amperes;
    }

    /** ABYC E-11, July 2025, as quoted: any parallel bank above 500 Ah has a device at each battery. */
    private void batteries() {
        BuiltDesign.Cable each = design.cables().stream()
                .filter(cable -> cable.name().equals(BATTERY))
                .findFirst()
                .orElse(null);
        boolean asked = design.capacityAh() > 500 && design.batteries() > 1 && hasMain();
        expect(!asked || each != null, "batteries: no fuse of their own");
        if (each != null) {
            expect(each.count() == design.batteries(), "batteries: not a fuse for each");
            double mainA = design.cables().stream()
                    .filter(cable -> cable.name().equals(MAIN))
                    .mapToDouble(BuiltDesign.Cable::currentA)
                    .sum();
            expect(each.fuseA() * each.count() >= mainA, "batteries: fuses below the main current");
        }
    }

    private boolean hasMain() {
        return design.cables().stream().anyMatch(cable -> cable.name().equals(MAIN));
    }

    private double highestV(String name) {
        return switch (name) {
            case VEHICLE_SIDE -> 15.5 * design.vehicleV() / 12;
            case ARRAY, STRING -> coldOpenV();
            case DISTRIBUTION -> isConverted() ? 13.8 : bankHighestV();
            default -> bankHighestV();
        };
    }

    /** Whether a converter stands between the bus and the loads: it limits its own current. */
    private boolean isConverted() {
        return design.cables().stream().anyMatch(cable -> cable.name().equals("DC converter"));
    }

    private double bankHighestV() {
        double[] atEachBus =
                switch (design.chemistry()) {
                    case LFP -> new double[] {14.6, 29.2, 58.4};
                    case AGM -> new double[] {14.7, 29.4, 58.8};
                    case GEL -> new double[] {14.5, 29, 58};
                    case FLOODED -> new double[] {15.6, 31.2, 62.4};
                    case NMC -> new double[] {16.8, 29.4, 58.8};
                };
        return atEachBus[design.busV() == 12 ? 0 : design.busV() == 24 ? 1 : 2];
    }

    private double shortAPerAh() {
        return switch (design.chemistry()) {
            case LFP -> 3.2 / 0.045;
            case NMC -> 3.65 / 0.075;
            case AGM -> 25.6;
            case GEL -> 16.0;
            case FLOODED -> 11.7;
        };
    }

    /** Crystalline silicon gains at least 0.27 % for each kelvin below 25 C (printed range 0.27 to 0.33 %). */
    private double coldOpenV() {
        return design.array().series() * MODULE_OPEN_V * (1 + 0.0027 * Math.max(0, 25 - design.coldestC()));
    }

    private double shortA(BuiltDesign.Cable cable) {
        return switch (cable.name()) {
            case VEHICLE_SIDE -> 5000;
            case ARRAY -> stringsOfOne() * 1.25 * moduleShortA();
            case STRING -> (stringsOfOne() - 1) * 1.25 * moduleShortA();
            case MAIN -> bankShortA();
            case BATTERY -> bankShortA() * Math.max(1, design.batteries() - 1) / design.batteries();
            case DISTRIBUTION -> isConverted() ? CONVERTER_SHORT_A : busbarShortA();
            default -> busbarShortA();
        };
    }

    private double bankShortA() {
        if (design.statedShortA() > 0) {
            return design.statedShortA();
        }
        double bare = shortAPerAh() * design.capacityAh();
        double cells = design.busV() / (design.busV() / bare + 4 * JOINT_OHM);
        return design.capacityAh() > 500 ? Math.max(cells, 20_000) : cells;
    }

    private double busbarShortA() {
        double mainOhm = design.cables().stream()
                .filter(cable -> cable.name().equals(MAIN))
                .mapToDouble(main -> 2 * main.lengthM() * 0.01786 / main.mm2())
                .findFirst()
                .orElse(0);
        return design.busV() / (design.busV() / bankShortA() + mainOhm + 2 * JOINT_OHM);
    }

    private void alternator() {
        double outOfIt = design.chargerA() * design.busV() / (13.5 * design.vehicleV() / 12);
        expect(outOfIt <= 0.5 * design.alternatorLabelA() + 1e-6, "alternator: asked for more than half of its label");
        boolean drives = design.chargerA() > 0;
        long sides = design.cables().stream()
                .filter(cable -> cable.name().contains("alternator charger"))
                .count();
        expect(sides == (drives ? 2 : 0), "alternator: not two circuits");
        design.cables().stream()
                .filter(cable -> cable.name().equals(VEHICLE_SIDE))
                .forEach(side -> expect(
                        side.currentA() >= design.chargerA() * design.busV() / (0.95 * design.vehicleV()),
                        "alternator: input current at the lowest volts"));
    }

    private double moduleShortA() {
        return SHORT_CIRCUIT_A_OF_100_W * design.array().moduleW() / 100;
    }

    private double stringsOfOne() {
        return Math.ceil((double) design.array().parallel() / design.array().controllers());
    }

    private void strings() {
        BuiltDesign.Panels array = design.array();
        double built = array.series() * array.parallel() * array.moduleW();
        expect(Math.abs(built - array.powerW()) < 1e-6 * array.powerW(), "strings: not the array, or not equal");
        double others = (stringsOfOne() - 1) * 1.25 * moduleShortA();
        if (others <= LARGEST_SERIES_FUSE_A) {
            return;
        }
        BuiltDesign.Cable fused = design.cables().stream()
                .filter(cable -> cable.name().equals(STRING))
                .findFirst()
                .orElse(null);
        expect(fused != null, "strings: no fuse of their own");
        if (fused != null) {
            expect(fused.count() == array.parallel(), "strings: not a fuse for each");
            expect(
                    fused.fuseA() >= 1.5625 * moduleShortA() - 1e-9 && fused.fuseA() <= LARGEST_SERIES_FUSE_A,
                    "strings: rating of their fuse");
        }
    }

    private void controllers() {
        BuiltDesign.Panels array = design.array();
        double outputA = stringsOfOne() * array.series() * array.moduleW() / (1.225 * design.busV());
        expect(array.controllerA() <= 100 && array.controllerA() >= outputA, "controller: rating");
        expect(
                design.cables().stream()
                        .filter(cable ->
                                cable.name().equals(ARRAY) || cable.name().startsWith("charge controller"))
                        .allMatch(cable -> cable.count() == array.controllers()),
                "controller: its own cables");
    }

    private void expect(boolean holds, String otherwise) {
        if (!holds) {
            found.add(otherwise);
        }
    }
}
