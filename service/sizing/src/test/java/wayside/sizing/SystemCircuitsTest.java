package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.brief.Box;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.CircuitLengths;
import wayside.sizing.brief.ControllerSize;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.SizeOrigin;
import wayside.sizing.brief.SizesThatExist;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Surge;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Trip;
import wayside.sizing.brief.Vehicle;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.system.ArrayStrings;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.wiring.SizedCircuit;

/** The cables of a whole system against each other: sources, strings, and a short at each fuse's own place. */
class SystemCircuitsTest {
    private static final OptionalDouble OPEN = OptionalDouble.empty();
    private static final OptionalDouble NONE = OptionalDouble.of(0);

    /** A bus, a vehicle, and what is given of bank, array and alternator's charger. */
    private record Given(
            double busV,
            double vehicleV,
            OptionalDouble alternatorLabelA,
            OptionalDouble nominalWh,
            OptionalDouble solarW,
            OptionalDouble chargerA,
            SizesThatExist sizes) {
        /** A ladder of one charge controller. */
        private static final SizesThatExist CONTROLLER = new SizesThatExist(
                List.of(),
                List.of(),
                List.of(new ControllerSize(
                        SizeOrigin.given(At.ROOT.field("controller")), 75, 100, 48, 3, new Box(200, 200, 100))),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());

        /** On controllers that stand no more than 75 V: short strings. */
        static Given sunAtLowVoltage(double busV, double solarW) {
            return new Given(busV, 12, OPEN, OPEN, OptionalDouble.of(solarW), NONE, CONTROLLER);
        }

        static Given sun(double busV, double solarW) {
            return new Given(busV, 12, OPEN, OPEN, OptionalDouble.of(solarW), NONE, SizesThatExist.OPEN);
        }

        static Given engine(double busV, double vehicleV, double labelA, OptionalDouble chargerA) {
            return new Given(
                    busV,
                    vehicleV,
                    OptionalDouble.of(labelA),
                    OptionalDouble.of(5120),
                    OPEN,
                    chargerA,
                    SizesThatExist.OPEN);
        }

        Recommendation answer() {
            At at = At.ROOT.field("system");
            SystemWishes wishes = new SystemWishes(
                            at,
                            OptionalDouble.of(busV),
                            Optional.of(Chemistry.LFP),
                            nominalWh,
                            solarW,
                            PanelMount.open(at.field("panel")),
                            chargerA,
                            OPEN,
                            InverterSpec.open(at.field("inverter")),
                            OPEN,
                            BankPlacement.OPEN,
                            new Vehicle(at.field("vehicle"), OptionalDouble.of(vehicleV), alternatorLabelA),
                            Optional.empty(),
                            CircuitLengths.open(at.field("circuitLengthsM")))
                    .of(sizes);
            Stay stay = Stay.of(Place.of(44, 7), 7, 5).at(new Ambient(15, 8)).driving(1);
            SystemBrief open = SystemBrief.of(Trip.of(stay), Load.dc("fridge", 40, 10));
            return SystemSizer.size(new SystemBrief(
                            open.at(), open.loads(), open.trip(), wishes, open.target(), open.sampling()))
                    .result();
        }
    }

    private static SizedCircuit.Wired circuit(SizedSystem system, String name) {
        return (SizedCircuit.Wired) system.circuits().stream()
                .filter(circuit -> circuit.duty().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> names(SizedSystem system) {
        return system.circuits().stream().map(circuit -> circuit.duty().name()).toList();
    }

    // A lithium bank of 400 Ah at 12 V: 12.8 V behind 4 x 0.075 mOhm and four joints of 0.05 mOhm, 24 to 25 kA; one
    // figure at
    // bank and main fuse. Source of 20 kA as the least: ABYC E-11, large banks, as quoted.
    @Test
    void bankAndMainFuseTellOneShortCircuit() {
        SizedSystem system = Given.engine(12, 12, 120, NONE).answer().system();
        double bank = system.prospectiveShortCircuitA().value();
        assertThat(bank).isBetween(23_000.0, 26_000.0);
        SizedCircuit.Wired main = circuit(system, "battery main");
        assertThat(main.duty().interruptA().value()).isEqualTo(bank);
        assertThat(main.fuse().link().breakingA().value()).isGreaterThanOrEqualTo(bank);
    }

    // Ohm's law: behind the main cable a short is weaker, and it stays above what a blade fuse breaks (ISO 8820-3: 1
    // kA).
    @Test
    void branchesSeeTheBankBehindTheMainCable() {
        SizedSystem system =
                Given.engine(12, 12, 120, OptionalDouble.of(30)).answer().system();
        double busbar = circuit(system, "distribution").duty().interruptA().value();
        assertThat(busbar).isLessThan(system.prospectiveShortCircuitA().value()).isGreaterThan(2000);
        assertThat(circuit(system, "alternator charger to battery")
                        .duty()
                        .interruptA()
                        .value())
                .isEqualTo(busbar);
    }

    // Source: ABYC E-11, Table V.A, as reprinted: 5,000 A is the largest class of a main device. ISO 8854, as quoted:
    // 12 V
    // and 24 V nets; a 12 V net of a smart alternator runs at 12.0 to 15.5 V, as secondary pages give it.
    @ParameterizedTest
    @CsvSource({"48, 12, 10", "24, 24, 25", "12, 24, 40"})
    void theAlternatorHasACircuitOnEitherSideOfItsCharger(double busV, double vehicleV, double chargerA) {
        SizedSystem system = Given.engine(busV, vehicleV, 120, OptionalDouble.of(chargerA))
                .answer()
                .system();
        SizedCircuit.Wired vehicle = circuit(system, "starter battery to alternator charger");
        assertThat(vehicle.duty().voltageV().value()).isEqualTo(vehicleV);
        assertThat(vehicle.duty().highestVoltageV().value()).isCloseTo(15.5 * vehicleV / 12, within(1e-9));
        assertThat(vehicle.duty().interruptA().value()).isEqualTo(5000);
        double volts = 12.0 * vehicleV / 12 * 0.97;
        assertThat(vehicle.duty().currentA().value())
                .isBetween(chargerA * busV * 1.21 / 0.9 / volts, chargerA * busV * 1.22 / 0.86 / volts);
        assertThat(vehicle.conductor().voltageDropV().value()).isLessThanOrEqualTo(0.03 * vehicleV);
        SizedCircuit.Wired house = circuit(system, "alternator charger to battery");
        assertThat(house.duty().voltageV().value()).isEqualTo(busV);
        assertThat(house.duty().currentA().value()).isEqualTo(chargerA);
    }

    // Common practice, no source: an alternator gives half of its label without harm. 200 A at 13.6 V out of 70 A at
    // 13.5 V.
    @Test
    void aChargerThatAsksTooMuchOfTheAlternatorIsAShortfall() {
        Recommendation answer = Given.engine(12, 12, 70, OptionalDouble.of(200)).answer();
        Shortfall shortfall = answer.shortfalls().get(0);
        assertThat(shortfall.code()).isEqualTo("alternator-overloaded");
        assertThat(shortfall.needed().value()).isCloseTo(200 * 13.6 / 0.92 / 13.5, within(1e-9));
        assertThat(shortfall.available().value()).isEqualTo(35);
        assertThat(shortfall.message().find("charger")).hasValueSatisfying(charger -> assertThat(
                        ((Parameter.Figure) charger).quantity().value())
                .isEqualTo(Math.floor(35 * 13.5 * 0.92 / 13.6)));
        assertThat(Given.engine(12, 12, 70, OptionalDouble.of(31)).answer().shortfalls())
                .isEmpty();
    }

    @Test
    void aTrucksAlternatorGivesTwiceThePower() {
        double van = limitA(12);
        assertThat(limitA(24)).isCloseTo(2 * van, within(1e-9));
    }

    private static double limitA(double vehicleV) {
        return Given.engine(24, vehicleV, 110, OPEN)
                .answer()
                .system()
                .chargers()
                .alternator()
                .orElseThrow()
                .limitA()
                .value();
    }

    @Test
    void noChargerIsSizedThatTheAlternatorCannotFeed() {
        SizedSystem system = Given.engine(48, 12, 30, OPEN).answer().system();
        assertThat(system.chargers().alternator()).isEmpty();
        assertThat(names(system)).doesNotContain("alternator charger to battery");
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 300, 500, 700, 1100, 1300, 1700, 1900})
    void anArrayIsEqualStringsOfWholeModules(int powerW) {
        ArrayStrings strings =
                Given.sun(12, powerW).answer().system().array().orElseThrow().strings();
        double modules = strings.seriesCount().value() * strings.parallelCount().value();
        assertThat(modules * strings.modulePowerW().value()).isCloseTo(powerW, within(1e-9));
        assertThat(modules).isBetween(powerW / 100.0, powerW / 100.0 + 1);
        if (powerW > 100) {
            assertThat(strings.seriesCount().value()).isGreaterThan(1);
        }
    }

    // Source: NFPA 70-2020, 690.9(A)(1): (4 - 1) x 1.25 x 6 A = 22.5 A is above a module's 15 A, (3 - 1) x 1.25 x 6 A =
    // 15 A is
    // not; 690.9(B)(1): 1.5625 x 6 A = 9.4 A, the next rating of 240.6(A) is 10 A.
    @Test
    void fourStringsAreFusedOneByOneAndThreeAreNot() {
        SizedSystem four = Given.sunAtLowVoltage(12, 800).answer().system();
        assertThat(four.array().orElseThrow().stringFuses().othersA().value()).isEqualTo(22.5);
        SizedCircuit.Wired string = circuit(four, "string of modules");
        assertThat(string.duty().details().count().orElseThrow().value()).isEqualTo(4);
        assertThat(string.fuse().ratingA().value()).isEqualTo(10);
        assertThat(string.fuse().link().standard()).isEqualTo("IEC 60269-6");
        SizedSystem three = Given.sunAtLowVoltage(12, 600).answer().system();
        assertThat(names(three)).doesNotContain("string of modules");
    }

    // 3,000 W at 12.8 V are 234 A: three controllers, the trade making none above 100 A (common practice, no source).
    @Test
    void aLargeArrayHasSeveralControllersEachWithItsCables() {
        SizedSystem system = Given.sun(12, 3000).answer().system();
        assertThat(system.array().orElseThrow().controllers().count().value()).isEqualTo(3);
        assertThat(system.array().orElseThrow().controllers().ratedA().value()).isLessThanOrEqualTo(100);
        assertThat(circuit(system, "charge controller to battery")
                        .duty()
                        .details()
                        .count()
                        .orElseThrow()
                        .value())
                .isEqualTo(3);
        assertThat(circuit(system, "array to charge controller")
                        .duty()
                        .details()
                        .count()
                        .orElseThrow()
                        .value())
                .isEqualTo(3);
    }

    // Strings of 145 V in the cold, 38 A together: an ordinary array of 3 kW on a 48 V bus.
    @Test
    void threeKilowattsAtFortyEightVoltsCanBeFused() {
        assertThat(Given.sun(48, 3000).answer().shortfalls()).isEmpty();
    }

    // Common practice, no source: a lug for a battery post is made for 16 mm2 (6 AWG) and more.
    @Test
    void theMainCableIsThickEnoughForItsLugs() {
        SizedCircuit.Wired main = circuit(Given.sun(12, 100).answer().system(), "battery main");
        assertThat(main.metric().orElseThrow().areaMm2().value()).isGreaterThanOrEqualTo(16);
        assertThat(main.conductor().size().title()).isEqualTo("6 AWG");
    }

    // Source: ISO 8820-3, operating times as reprinted: a blade holds twice its rating for at least 0.15 s. A
    // compressor of
    // 120 W that starts with 1,200 W takes 100 A at 12.0 V: 50 A, where 1.25 times its running current asks for 15 A.
    @Test
    void aStartReachesTheFuseOfTheDistribution() {
        Load compressor = Load.dc("compressor", 120, 4).withSurge(new Surge.Factor(10));
        SystemBrief brief =
                SystemBrief.of(Trip.of(Stay.of(Place.of(44, 7), 7, 5).at(new Ambient(15, 8))), compressor);
        SizedCircuit.Wired distribution =
                circuit(SystemSizer.size(brief).result().system(), "distribution");
        assertThat(distribution.fuse().ratingA().value()).isGreaterThanOrEqualTo(50);
        assertThat(distribution.duty().currentA().value()).isLessThan(12);
    }
}
