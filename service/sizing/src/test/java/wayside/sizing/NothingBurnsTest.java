package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Trip;
import wayside.sizing.brief.Vehicle;
import wayside.sizing.laws.Law;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.trace.Parameter;

/** Random systems of every chemistry and voltage, judged by a check that shares nothing with the core. */
class NothingBurnsTest {
    private static final int SYSTEMS = 1500;
    private static final int FEASIBLE_AT_LEAST = 600;
    private static final List<Chemistry> CHEMISTRIES = List.of(Chemistry.values());
    private static final double[] BUSES_V = {12, 24, 48};

    @Test
    void noFeasibleSystemCanBurn() {
        Random random = new Random(15);
        int feasible = 0;
        int fusedStrings = 0;
        int manyControllers = 0;
        for (int i = 0; i < SYSTEMS; i++) {
            Question question = Question.any(random);
            Recommendation answer = SystemSizer.size(question.brief()).result();
            assertThat(answer.laws().all())
                    .filteredOn(law -> law.verdict() == Law.Verdict.HOLDS)
                    .allSatisfy(law -> assertThat(law.margin().value())
                            .as("%s", law.code())
                            .isGreaterThanOrEqualTo(-1e-9));
            if (answer.feasible()) {
                BuiltDesign design = question.built(answer);
                assertThat(FireCheck.of(design)).as("%s", design).isEmpty();
                assertThat(question.bankFaults(design, answer)).as("%s", design).isEmpty();
                feasible++;
                fusedStrings +=
                        design.cables().stream().anyMatch(cable -> cable.name().equals(FireCheck.STRING)) ? 1 : 0;
                manyControllers += design.array().controllers() > 1 ? 1 : 0;
            }
        }
        assertThat(feasible).isGreaterThanOrEqualTo(FEASIBLE_AT_LEAST);
        assertThat(fusedStrings).isGreaterThan(20);
        assertThat(manyControllers).isGreaterThan(5);
    }

    /** The other check itself. */
    @Test
    void theCheckOfTheBankFindsEachPlantedFault() {
        BuiltDesign sound = sound();
        OptionalDouble none = OptionalDouble.empty();
        assertThat(BankCheck.of(sound, 50, 500, none, false)).isEmpty();
        assertThat(BankCheck.of(sound, 50, 5000, none, false)).containsExactly("drawn too hard");
        assertThat(BankCheck.of(charging(sound, 60), 50, 500, none, false)).containsExactly("charged too hard");
        assertThat(BankCheck.of(sound, 50, 500, OptionalDouble.of(70), false)).containsExactly("charged too hard");
        assertThat(BankCheck.of(with(sound, FireCheck.MAIN, c -> thinner(c, 8)), 50, 500, none, false))
                .contains("drop to the inverter");
        assertThat(BankCheck.of(sound, 50, 500, none, true)).containsExactly("charged in frost");
    }

    private static BuiltDesign.Cable thinner(BuiltDesign.Cable cable, double times) {
        return new BuiltDesign.Cable(
                cable.name(),
                cable.count(),
                cable.currentA(),
                cable.lengthM(),
                cable.mm2() / times,
                cable.fuseA(),
                cable.fuseV(),
                cable.breaksA(),
                cable.toBeConfirmed());
    }

    /** The check itself: each of these faults, planted in a sound design, is found. */
    @Test
    void theCheckFindsEachPlantedFault() {
        BuiltDesign sound = sound();
        assertThat(FireCheck.of(sound)).isEmpty();
        assertThat(FireCheck.of(with(sound, FireCheck.MAIN, c -> fuse(c, c.fuseA(), 58, c.breaksA()))))
                .containsExactly("battery main: fuse volts");
        assertThat(FireCheck.of(with(sound, "inverter", c -> fuse(c, c.fuseA(), c.fuseV(), 2000))))
                .containsExactly("inverter: fuse breaks too little");
        assertThat(FireCheck.of(with(sound, FireCheck.VEHICLE_SIDE, c -> fuse(c, c.fuseA(), c.fuseV(), 1000))))
                .containsExactly("starter battery to alternator charger: fuse breaks too little");
        assertThat(FireCheck.of(with(sound, FireCheck.STRING, c -> fuse(c, 20, c.fuseV(), c.breaksA()))))
                .containsExactly("strings: rating of their fuse");
        assertThat(FireCheck.of(without(sound, FireCheck.STRING))).containsExactly("strings: no fuse of their own");
        assertThat(FireCheck.of(without(sound, FireCheck.VEHICLE_SIDE)))
                .containsExactly("alternator: not two circuits");
        assertThat(FireCheck.of(strung(sound, 1))).contains("strings: not the array, or not equal");
        assertThat(FireCheck.of(charging(sound, 60))).contains("alternator: asked for more than half of its label");
    }

    /** Four strings of three modules, a 48 V bank of 100 Ah, 20 A off a 24 V alternator of 100 A. */
    private static BuiltDesign sound() {
        Question question = new Question(
                Chemistry.LFP,
                48,
                24,
                OptionalDouble.of(100),
                OptionalDouble.of(20),
                OptionalDouble.of(5120),
                2400,
                500,
                0);
        Recommendation answer = SystemSizer.size(question.brief()).result();
        assertThat(answer.shortfalls()).isEmpty();
        return question.built(answer);
    }

    private static BuiltDesign.Cable fuse(BuiltDesign.Cable cable, double ratingA, double volts, double breaksA) {
        return new BuiltDesign.Cable(
                cable.name(),
                cable.count(),
                cable.currentA(),
                cable.lengthM(),
                cable.mm2(),
                ratingA,
                volts,
                breaksA,
                false);
    }

    private static BuiltDesign with(BuiltDesign design, String name, UnaryOperator<BuiltDesign.Cable> change) {
        List<BuiltDesign.Cable> cables = new ArrayList<>(design.cables());
        cables.replaceAll(cable -> cable.name().equals(name) ? change.apply(cable) : cable);
        assertThat(cables).isNotEqualTo(design.cables());
        return copy(design, design.chargerA(), design.array(), cables);
    }

    private static BuiltDesign without(BuiltDesign design, String name) {
        List<BuiltDesign.Cable> cables = new ArrayList<>(design.cables());
        assertThat(cables.removeIf(cable -> cable.name().equals(name))).isTrue();
        return copy(design, design.chargerA(), design.array(), cables);
    }

    private static BuiltDesign strung(BuiltDesign design, int series) {
        BuiltDesign.Panels old = design.array();
        return copy(
                design,
                design.chargerA(),
                new BuiltDesign.Panels(
                        old.powerW(), old.moduleW(), series, old.parallel(), old.controllers(), old.controllerA()),
                design.cables());
    }

    private static BuiltDesign charging(BuiltDesign design, double chargerA) {
        return copy(design, chargerA, design.array(), design.cables());
    }

    private static BuiltDesign copy(
            BuiltDesign design, double chargerA, BuiltDesign.Panels array, List<BuiltDesign.Cable> cables) {
        return new BuiltDesign(
                design.chemistry(),
                design.busV(),
                design.capacityAh(),
                design.coldestC(),
                design.vehicleV(),
                design.alternatorLabelA(),
                chargerA,
                array,
                cables);
    }

    /** A question in the figures that matter here; what is empty is left open. */
    private record Question(
            Chemistry chemistry,
            double busV,
            double vehicleV,
            OptionalDouble alternatorLabelA,
            OptionalDouble chargerA,
            OptionalDouble nominalWh,
            double solarW,
            double acW,
            double ambientC) {
        private static final double SWING_K = 8;

        static Question any(Random random) {
            double bus = BUSES_V[random.nextInt(3)];
            double label = 30 + random.nextInt(200);
            return new Question(
                    CHEMISTRIES.get(random.nextInt(CHEMISTRIES.size())),
                    bus,
                    random.nextBoolean() ? 12 : 24,
                    maybe(random, 0.7, label),
                    maybe(random, 0.4, label * 12 / bus * random.nextDouble()),
                    maybe(random, 0.3, 300 * Math.pow(100, random.nextDouble())),
                    random.nextInt(3) == 0 ? 0 : 100 + 100 * random.nextInt(40) + random.nextInt(2) * 37,
                    random.nextBoolean() ? 0 : 100 + random.nextInt(2500),
                    -10 + random.nextInt(35));
        }

        private static OptionalDouble maybe(Random random, double chance, double value) {
            return random.nextDouble() < chance ? OptionalDouble.of(value) : OptionalDouble.empty();
        }

        SystemBrief brief() {
            Stay stay = Stay.of(Place.of(40, 10), 7, 5)
                    .at(new Ambient(ambientC, SWING_K))
                    .driving(2);
            List<Load> loads = new ArrayList<>(List.of(Load.dc("fridge", 50, 10)));
            if (acW > 0) {
                loads.add(Load.ac("hob", acW, 0.2));
            }
            SystemBrief open = SystemBrief.of(Trip.of(stay), loads.toArray(Load[]::new));
            return new SystemBrief(open.at(), open.loads(), open.trip(), wishes(), open.target(), open.sampling());
        }

        private SystemWishes wishes() {
            At at = At.ROOT.field("system");
            OptionalDouble open = OptionalDouble.empty();
            return new SystemWishes(
                    at,
                    OptionalDouble.of(busV),
                    Optional.of(chemistry),
                    nominalWh,
                    solarW > 0 ? OptionalDouble.of(solarW) : open,
                    PanelMount.open(at.field("panel")),
                    chargerA,
                    open,
                    InverterSpec.open(at.field("inverter")),
                    open,
                    BankPlacement.OPEN,
                    new Vehicle(at.field("vehicle"), OptionalDouble.of(vehicleV), alternatorLabelA),
                    Optional.empty(),
                    CircuitLengths.open(at.field("circuitLengthsM")));
        }

        List<String> bankFaults(BuiltDesign design, Recommendation answer) {
            OptionalDouble setting = answer.cautions().stream()
                    .filter(caution -> caution.code().equals("limit-the-controllers"))
                    .map(caution -> caution.message().find("setting").orElseThrow())
                    .mapToDouble(
                            figure -> ((Parameter.Figure) figure).quantity().value())
                    .findFirst();
            boolean carriedAlone = answer.cautions().stream()
                    .anyMatch(caution -> caution.code().equals("nothing-charges-it"));
            boolean frozen = ambientC + SWING_K / 2 < 0 && !carriedAlone;
            return BankCheck.of(design, 50, acW, setting, frozen);
        }

        BuiltDesign built(Recommendation answer) {
            return BuiltDesign.of(answer.system(), ambientC - SWING_K / 2, vehicleV, alternatorLabelA.orElse(120));
        }
    }
}
