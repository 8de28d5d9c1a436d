package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BatterySize;
import wayside.sizing.brief.Box;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.InverterSize;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Locker;
import wayside.sizing.brief.ModuleSize;
import wayside.sizing.brief.Roof;
import wayside.sizing.brief.SizeOrigin;
import wayside.sizing.brief.SizesThatExist;
import wayside.sizing.brief.SystemBrief;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Target;
import wayside.sizing.brief.Trip;
import wayside.sizing.brief.Vehicle;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.system.BuyableArray;
import wayside.sizing.system.BuyableBank;
import wayside.sizing.trace.Computed;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.NamedOperation;
import wayside.sizing.trace.Shortfall;

/** What is sized is made of parts that exist and has its room; what is given stays as given. */
class BuyableSystemTest {
    private static final At SYSTEM = At.ROOT.field("system");
    private static final Roof ANY_ROOF = Roof.open(SYSTEM.field("roof"));
    private static final Locker ANY_LOCKER = Locker.open(SYSTEM.field("locker"));
    private static final Vehicle ANY_VEHICLE = Vehicle.open(SYSTEM.field("vehicle"));
    private static final Box CASE = new Box(300, 200, 200);

    private static Recommendation size(double watts, UnaryOperator<SystemWishes> wishes, Target target) {
        SystemBrief open = SystemBrief.of(Trip.of(Briefs.stay(5, 20)), Load.dc("all", watts, 10));
        return SystemSizer.size(new SystemBrief(
                        open.at(), open.loads(), open.trip(), wishes.apply(open.system()), target, open.sampling()))
                .result();
    }

    private static Recommendation size(double watts, UnaryOperator<SystemWishes> wishes) {
        return size(watts, wishes, Target.OPEN);
    }

    private static SizesThatExist batteries(BatterySize... ladder) {
        return new SizesThatExist(
                List.of(ladder), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    private static BatterySize battery(double capacityAh, int mostInParallel) {
        return new BatterySize(
                SizeOrigin.given(SYSTEM.field("sizes").field("batteries").entry(0)),
                Chemistry.LFP,
                12.8,
                capacityAh,
                1,
                mostInParallel,
                10,
                CASE);
    }

    private static List<String> codes(Recommendation answer) {
        return answer.shortfalls().stream().map(Shortfall::code).toList();
    }

    @Test
    void theBankIsTheNextOfWholeBatteries() {
        Recommendation answer = size(40, wishes -> wishes);
        BuyableBank bank = answer.system().battery().buyable().orElseThrow();
        double neededWh = answer.system().battery().neededWh().value();
        // 40 W for 10 h and 5 W around the clock, 2 days, a fifth in hand, 0.98 of the discharge, 0.8 at the end of its
        // life,
        // 0.97 at 20 C.
        assertThat(neededWh).isCloseTo(520 * 2 * 1.2 / 0.98 / 0.8 / 0.97, within(1.0));
        assertThat(bank.energyWh().value()).isEqualTo(12.8 * 150).isGreaterThan(neededWh);
        assertThat(answer.system().battery().bank().nominalEnergyWh()).isEqualTo(bank.energyWh());
        assertThat(answer.system().battery().bank().massKg().typical().value()).isEqualTo(16.5);
        assertThat(bank.parallelCount()).isInstanceOfSatisfying(Computed.class, step -> assertThat(step.method())
                .isInstanceOfSatisfying(NamedOperation.class, next -> {
                    assertThat(next.kind()).isEqualTo(NamedOperation.Kind.NEXT_SIZE);
                    assertThat(next.note()).startsWith("next size");
                }));
    }

    @Test
    void aGivenBankStaysAsItIs() {
        Recommendation answer = size(40, wishes -> Briefs.owning(2400, 300));
        assertThat(answer.system().battery().bank().nominalEnergyWh().value()).isEqualTo(2400);
        assertThat(answer.system().battery().buyable()).isEmpty();
        assertThat(answer.system().array().orElseThrow().powerW().value()).isEqualTo(300);
        assertThat(answer.system().array().orElseThrow().buyable()).isEmpty();
    }

    @Test
    void ofItsOwnSizesAShopGetsNoOthers() {
        BuyableBank bank = size(40, wishes -> wishes.of(batteries(battery(30, 6))))
                .system()
                .battery()
                .buyable()
                .orElseThrow();
        assertThat(bank.capacityAh())
                .isEqualTo(Derived.given(
                        "lfp bank: capacity of a battery",
                        30,
                        bank.capacityAh().unit(),
                        "/system/sizes/batteries/0/capacityAh"));
        assertThat(bank.count().value()).isEqualTo(5);
    }

    @Test
    void whereTheLadderEndsTheNumberIsSaid() {
        Recommendation answer = size(400, wishes -> wishes.of(batteries(battery(30, 6))));
        Shortfall shortfall = answer.shortfalls().stream()
                .filter(one -> one.code().equals("bank-not-made"))
                .findFirst()
                .orElseThrow();
        assertThat(shortfall.available().value()).isCloseTo(6 * 30 * 12.8, within(1e-9));
        assertThat(shortfall.needed())
                .isEqualTo(answer.system().battery().bank().nominalEnergyWh());
        assertThat(answer.system().circuits()).isNotEmpty();
    }

    @Test
    void anInverterThatNobodyMakesIsAShortfall() {
        InverterSize one = new InverterSize(SizeOrigin.given(SYSTEM.field("sizes")), 1000, 2000, 1, 5, CASE);
        SizesThatExist sizes = new SizesThatExist(
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(one), List.of(), List.of());
        SystemBrief open = SystemBrief.of(Trip.of(Briefs.stay(5, 20)), Load.ac("hob", 1500, 0.3));
        Recommendation answer = SystemSizer.size(new SystemBrief(
                        open.at(), open.loads(), open.trip(), open.system().of(sizes), open.target(), open.sampling()))
                .result();
        assertThat(answer.shortfalls())
                .filteredOn(shortfall -> shortfall.code().equals("inverter-not-made"))
                .singleElement()
                .satisfies(shortfall -> {
                    assertThat(shortfall.needed().value()).isEqualTo(1500 * 1.25);
                    assertThat(shortfall.available().value()).isEqualTo(1000);
                });
    }

    // Definition: what a rectangle takes, counted by hand with 3 cm between and around modules of 1,000 by 500 mm.
    @ParameterizedTest
    @CsvSource({"2.06, 1.03, 4", "1.03, 2.06, 4", "1.6, 0.52, 1", "0.52, 1.6, 1", "1.56, 1.0, 3", "0.9, 0.49, 0"})
    void panelsLieInRowsEitherWayRound(double lengthM, double widthM, int modules) {
        ModuleSize module = new ModuleSize(
                SizeOrigin.given(SYSTEM.field("sizes")), 100, 22, 18.9, 6, 5.3, 15, 6, new Box(1000, 500, 30));
        SizesThatExist sizes = new SizesThatExist(
                List.of(), List.of(module), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
        At at = SYSTEM.field("roof");
        Roof roof = new Roof(at, OptionalDouble.empty(), List.of(new Roof.Rectangle(at, lengthM, widthM)));
        Recommendation answer = size(300, wishes -> wishes.of(sizes).within(roof, ANY_LOCKER, ANY_VEHICLE));
        assertThat(codes(answer)).contains("roof-too-small");
        int built = answer.system()
                .array()
                .flatMap(array -> array.buyable())
                .map(array -> (int) array.roofTakes().value())
                .orElse(0);
        assertThat(built).isEqualTo(modules);
    }

    @Property(tries = 40)
    void noArrayIsLargerThanItsRoof(
            @ForAll @DoubleRange(min = 0.1, max = 12) double roofM2,
            @ForAll @DoubleRange(min = 5, max = 400) double watts) {
        Roof roof = new Roof(SYSTEM.field("roof"), OptionalDouble.of(roofM2), List.of());
        Recommendation answer = size(watts, wishes -> wishes.within(roof, ANY_LOCKER, ANY_VEHICLE));
        double areaM2 =
                answer.system().array().map(array -> array.areaM2().value()).orElse(0.0);
        assertThat(areaM2).isLessThanOrEqualTo(roofM2);
        double powerW =
                answer.system().array().map(array -> array.powerW().value()).orElse(0.0);
        assertThat(codes(answer).contains("roof-too-small"))
                .isEqualTo(powerW < answer.system().arrayNeed().worst().arrayW().value());
    }

    @Test
    void aBankThatDoesNotGoIntoItsLockerIsAShortfall() {
        Locker low = new Locker(SYSTEM.field("locker"), Optional.of(new Box(2000, 2000, 100)), OptionalDouble.empty());
        assertThat(codes(size(40, wishes -> wishes.within(ANY_ROOF, low, ANY_VEHICLE))))
                .containsExactly("locker-too-small");
        Locker small = new Locker(SYSTEM.field("locker"), Optional.empty(), OptionalDouble.of(12));
        Recommendation byLitres = size(40, wishes -> wishes.within(ANY_ROOF, small, ANY_VEHICLE));
        // 150 Ah take 330 x 172 x 220 mm, 12.5 L.
        assertThat(byLitres.shortfalls().get(0).needed().value()).isCloseTo(12.4872, within(1e-9));
        Locker wide = new Locker(SYSTEM.field("locker"), Optional.of(new Box(400, 400, 300)), OptionalDouble.empty());
        assertThat(size(40, wishes -> wishes.within(ANY_ROOF, wide, ANY_VEHICLE))
                        .feasible())
                .isTrue();
    }

    @Test
    void batteriesThatFitTheLockerGoBeforeFewerOnes() {
        // Two of 200 Ah (345 x 190 x 245 mm) for what one of 304 Ah, 260 mm high, would carry.
        Locker low = new Locker(SYSTEM.field("locker"), Optional.of(new Box(1000, 500, 250)), OptionalDouble.empty());
        BuyableBank bank = size(110, wishes -> wishes.within(ANY_ROOF, low, ANY_VEHICLE))
                .system()
                .battery()
                .buyable()
                .orElseThrow();
        assertThat(bank.heightMm().value()).isLessThanOrEqualTo(250);
        assertThat(bank.count().value()).isGreaterThan(1);
    }

    @Test
    void theWholeSystemIsHeldToThePayload() {
        Recommendation answer = size(40, wishes -> wishes);
        BuyableArray array = answer.system().array().orElseThrow().buyable().orElseThrow();
        double partsKg = 16.5
                + array.massKg().value()
                + answer.system().array().orElseThrow().controllers().size().massKg();
        assertThat(answer.system().mass().massKg().value()).isCloseTo(1.15 * partsKg, within(1e-9));
        Vehicle full = new Vehicle(
                SYSTEM.field("vehicle"), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(partsKg));
        assertThat(codes(size(40, wishes -> wishes.within(ANY_ROOF, ANY_LOCKER, full))))
                .containsExactly("payload-too-small");
    }

    @Test
    void byChanceTheChanceIsOfWholeBatteriesAndModules() {
        Recommendation answer = size(40, wishes -> wishes, Target.chance(0.05));
        BuyableBank bank = answer.system().battery().buyable().orElseThrow();
        BuyableArray array = answer.system().array().orElseThrow().buyable().orElseThrow();
        assertThat(bank.energyWh().value())
                .isEqualTo(bank.pack().count() * bank.pack().battery().energyWh())
                .isGreaterThanOrEqualTo(answer.system().battery().neededWh().value());
        assertThat(array.powerW().value())
                .isEqualTo(array.count().value() * array.modulePowerW().value());
        assertThat(answer.byChance().orElseThrow().curve())
                .allSatisfy(point -> assertThat(point.solarPowerW()).isLessThan(1200));
    }

    @Test
    void byChanceTheBankGivesTheHighestCurrent() {
        SystemBrief open = SystemBrief.of(Trip.of(Briefs.stay(5, 20)), Load.ac("kettle", 2000, 0.1));
        Recommendation answer = SystemSizer.size(new SystemBrief(
                        open.at(), open.loads(), open.trip(), open.system(), Target.chance(0.05), open.sampling()))
                .result();
        // 2 kW through an inverter, at one time the rated capacity an hour (common practice, no source).
        assertThat(answer.system().battery().bank().nominalEnergyWh().value()).isGreaterThan(2000);
    }
}
