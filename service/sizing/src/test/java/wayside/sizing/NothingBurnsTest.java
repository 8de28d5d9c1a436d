package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.BankRates;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Mains;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Trip;
import wayside.sizing.brief.Vehicle;
import wayside.sizing.laws.Law;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.system.graph.NodeKind;
import wayside.sizing.system.graph.SystemGraph;
import wayside.sizing.trace.Parameter;

/** Random systems of every chemistry and voltage, judged by a check that shares nothing with the core. */
class NothingBurnsTest {
    /** Fewer where time matters. */
    private static final int SYSTEMS = Integer.getInteger("wayside.systems", 10_000);

    private static final int FEASIBLE_AT_LEAST = SYSTEMS / 3;
    private static final List<Chemistry> CHEMISTRIES = List.of(Chemistry.values());
    private static final double[] BUSES_V = {12, 24, 48};

    @Test
    void noFeasibleSystemCanBurn() {
        Random random = new Random(15);
        int feasible = 0;
        int fusedStrings = 0;
        int manyControllers = 0;
        int fusedBatteries = 0;
        int pluggedIn = 0;
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
                assertThat(MainsCheck.of(design)).as("%s", design).isEmpty();
                assertThat(graphFaults(answer.system().graph())).isEmpty();
                feasible++;
                fusedStrings +=
                        design.cables().stream().anyMatch(cable -> cable.name().equals(FireCheck.STRING)) ? 1 : 0;
                manyControllers += design.array().controllers() > 1 ? 1 : 0;
                fusedBatteries +=
                        design.cables().stream().anyMatch(cable -> cable.name().equals(FireCheck.BATTERY)) ? 1 : 0;
                pluggedIn += design.mains().inletA() > 0 ? 1 : 0;
            }
        }
        assertThat(feasible).isGreaterThanOrEqualTo(FEASIBLE_AT_LEAST);
        assertThat(fusedStrings).isGreaterThan(20);
        assertThat(manyControllers).isGreaterThan(5);
        assertThat(fusedBatteries).isGreaterThan(SYSTEMS / 1000);
        assertThat(pluggedIn).isGreaterThan(SYSTEMS / 20);
    }

    /** Every part hangs on the others, every cable has a part at either end, and the DC ones a fuse where a battery feeds them. */
    private static List<String> graphFaults(SystemGraph graph) {
        List<String> found = new ArrayList<>();
        Set<NodeKind> reached = EnumSet.noneOf(NodeKind.class);
        reached.add(graph.nodes().get(0).kind());
        for (int round = 0; round < graph.nodes().size(); round++) {
            graph.cables().forEach(cable -> join(reached, cable.from(), cable.to()));
            graph.acCables().forEach(cable -> join(reached, cable.from(), cable.to()));
        }
        graph.nodes().stream()
                .filter(node -> !reached.contains(node.kind()))
                .forEach(node -> found.add("hangs on nothing: " + node));
        graph.cables().stream()
                .filter(cable -> cable.endFaultA().isPresent())
                .filter(cable -> cable.endFaultA().get().value()
                        > cable.circuit().duty().interruptA().value())
                .forEach(cable -> found.add("a short grows along " + cable.id()));
        return found;
    }

    private static void join(Set<NodeKind> reached, NodeKind one, NodeKind other) {
        if (reached.contains(one) || reached.contains(other)) {
            reached.add(one);
            reached.add(other);
        }
    }

    /** The other check itself. */
    @Test
    void theCheckOfTheBankFindsEachPlantedFault() {
        BuiltDesign sound = sound();
        OptionalDouble none = OptionalDouble.empty();
        assertThat(BankCheck.of(sound, 50, 500, none, false)).isEmpty();
        assertThat(BankCheck.of(sound, 50, 5000, none, false)).containsExactly("drawn too hard");
        assertThat(BankCheck.of(Planted.charging(sound, 60), 50, 500, none, false))
                .containsExactly("charged too hard");
        assertThat(BankCheck.of(sound, 50, 500, OptionalDouble.of(70), false)).containsExactly("charged too hard");
        assertThat(BankCheck.of(Planted.with(sound, FireCheck.MAIN, c -> Planted.thinner(c, 8)), 50, 500, none, false))
                .contains("drop to the inverter");
        assertThat(BankCheck.of(sound, 50, 500, none, true)).containsExactly("charged in frost");
    }

    /** The check itself: each of these faults, planted in a sound design, is found. */
    @Test
    void theCheckFindsEachPlantedFault() {
        BuiltDesign sound = sound();
        assertThat(FireCheck.of(sound)).isEmpty();
        assertThat(FireCheck.of(Planted.with(sound, FireCheck.MAIN, c -> Planted.fuse(c, c.fuseA(), 58, c.breaksA()))))
                .containsExactly("battery main: fuse volts");
        assertThat(FireCheck.of(Planted.with(sound, "inverter", c -> Planted.fuse(c, c.fuseA(), c.fuseV(), 2000))))
                .containsExactly("inverter: fuse breaks too little");
        assertThat(FireCheck.of(
                        Planted.with(sound, FireCheck.VEHICLE_SIDE, c -> Planted.fuse(c, c.fuseA(), c.fuseV(), 1000))))
                .containsExactly("starter battery to alternator charger: fuse breaks too little");
        assertThat(FireCheck.of(
                        Planted.with(sound, FireCheck.STRING, c -> Planted.fuse(c, 20, c.fuseV(), c.breaksA()))))
                .containsExactly("strings: rating of their fuse");
        assertThat(FireCheck.of(Planted.without(sound, FireCheck.STRING)))
                .containsExactly("strings: no fuse of their own");
        assertThat(FireCheck.of(Planted.without(sound, FireCheck.VEHICLE_SIDE)))
                .containsExactly("alternator: not two circuits");
        assertThat(FireCheck.of(Planted.strung(sound, 1))).contains("strings: not the array, or not equal");
        assertThat(FireCheck.of(Planted.charging(sound, 60)))
                .contains("alternator: asked for more than half of its label");
    }

    /** Four strings of three modules, a 48 V bank of 100 Ah, 20 A off a 24 V alternator of 100 A. */
    static BuiltDesign sound() {
        Question question = new Question(
                Chemistry.LFP,
                48,
                24,
                OptionalDouble.of(100),
                OptionalDouble.of(20),
                OptionalDouble.of(5120),
                2400,
                500,
                0,
                Stated.NONE);
        Recommendation answer = SystemSizer.size(question.brief()).result();
        assertThat(answer.shortfalls()).isEmpty();
        return question.built(answer);
    }

    /** A question in the figures that matter here; what is empty is left open. */
    record Question(
            Chemistry chemistry,
            double busV,
            double vehicleV,
            OptionalDouble alternatorLabelA,
            OptionalDouble chargerA,
            OptionalDouble nominalWh,
            double solarW,
            double acW,
            double ambientC,
            Stated stated) {
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
                    -10 + random.nextInt(35),
                    Stated.any(random));
        }

        static OptionalDouble maybe(Random random, double chance, double value) {
            return random.nextDouble() < chance ? OptionalDouble.of(value) : OptionalDouble.empty();
        }

        SystemBrief brief() {
            Stay stay = Stay.of(Place.of(40, 10), 7, 5)
                    .at(new Ambient(ambientC, SWING_K))
                    .driving(2)
                    .hookedUp(stated.hookupHours());
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
            SystemWishes plain = new SystemWishes(
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
            return plain.bearing(
                    new BankRates(
                            at,
                            stated.outA(),
                            OptionalDouble.empty(),
                            stated.intoA(),
                            stated.shortA(),
                            OptionalDouble.empty()),
                    new Mains(at.field("mains"), stated.mainsV(), stated.hookupA(), Optional.empty()));
        }

        List<String> bankFaults(BuiltDesign design, Recommendation answer) {
            OptionalDouble setting = answer.cautions().stream()
                    .filter(caution -> caution.code().equals("limit-the-controllers"))
                    .map(caution -> caution.message().find("setting").orElseThrow())
                    .mapToDouble(
                            figure -> ((Parameter.Figure) figure).quantity().value())
                    .findFirst();
            boolean carriedAlone = answer.cautions().stream()
                    .anyMatch(caution -> caution.code().startsWith("nothing-charges-it"));
            boolean frozen = ambientC + SWING_K / 2 < 0 && !carriedAlone;
            return BankCheck.of(
                    design,
                    50,
                    inverted(answer),
                    setting,
                    frozen,
                    stated.outA().orElse(0),
                    stated.intoA().orElse(0));
        }

        /** What the inverter gives: nothing where the hob runs at a hookup alone. */
        private double inverted(Recommendation answer) {
            return answer.system().inverter().isPresent() ? acW : 0;
        }

        BuiltDesign built(Recommendation answer) {
            return BuiltDesign.of(
                    answer.system(),
                    stated.shortA().orElse(0),
                    ambientC - SWING_K / 2,
                    vehicleV,
                    alternatorLabelA.orElse(120));
        }
    }

    /** What is stated of bank and hookup; what is empty is left open. */
    record Stated(
            OptionalDouble outA,
            OptionalDouble intoA,
            OptionalDouble shortA,
            OptionalDouble mainsV,
            OptionalDouble hookupA,
            double hookupHours) {
        static final Stated NONE = new Stated(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0);

        static Stated any(Random random) {
            return new Stated(
                    Question.maybe(random, 0.2, 20 + random.nextInt(400)),
                    Question.maybe(random, 0.2, 10 + random.nextInt(200)),
                    Question.maybe(random, 0.2, 1000 + random.nextInt(60_000)),
                    Question.maybe(random, 0.5, random.nextBoolean() ? 120 : 230),
                    Question.maybe(random, 0.5, 3 + random.nextInt(48)),
                    random.nextInt(3) > 0 ? 0 : random.nextInt(25));
        }
    }
}
