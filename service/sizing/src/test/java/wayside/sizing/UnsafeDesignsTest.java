package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.SystemBrief;

/** Sound designs with one fault planted in each: the independent check finds every one of them by its name. */
class UnsafeDesignsTest {
    private static final String CONTROLLER = "charge controller to battery";
    private static final String HOUSE = "alternator charger to battery";
    private static final BuiltDesign STRUNG = NothingBurnsTest.sound();
    private static final BuiltDesign LARGE = large();
    private static final OptionalDouble NO_SETTING = OptionalDouble.empty();

    /** A fault and the words that it must be found by. */
    private record Fault(String name, BuiltDesign design, String found) {
        Fault named(String other) {
            return new Fault(name, design, other);
        }
    }

    static List<Arguments> faults() {
        List<Fault> faults = new ArrayList<>();
        faults.addAll(ofFuses());
        faults.addAll(ofStrings());
        faults.addAll(ofBatteries());
        faults.addAll(ofTheBank());
        faults.addAll(ofMains());
        return faults.stream()
                .map(fault -> Arguments.of(fault.name(), fault.design(), fault.found()))
                .toList();
    }

    private static Fault cable(
            BuiltDesign design, String name, String what, UnaryOperator<BuiltDesign.Cable> change, String found) {
        return new Fault(name + ": " + what, Planted.with(design, name, change), name + ": " + found);
    }

    private static List<Fault> ofFuses() {
        List<Fault> faults = new ArrayList<>();
        for (String name : List.of(FireCheck.MAIN, "inverter", CONTROLLER, HOUSE)) {
            faults.add(cable(
                    STRUNG,
                    name,
                    "a 58 V fuse on a 48 V bank",
                    c -> Planted.fuse(c, c.fuseA(), 58, c.breaksA()),
                    "fuse volts"));
            faults.add(cable(
                    STRUNG,
                    name,
                    "a 32 V blade on a 48 V bank",
                    c -> Planted.fuse(c, c.fuseA(), 32, c.breaksA()),
                    "fuse volts"));
            faults.add(cable(
                    STRUNG,
                    name,
                    "a fuse that breaks 750 A",
                    c -> Planted.fuse(c, c.fuseA(), c.fuseV(), 750),
                    "fuse breaks too little"));
            faults.add(cable(
                    STRUNG,
                    name,
                    "a fuse of half its current",
                    c -> Planted.fuse(c, c.currentA() / 2, c.fuseV(), c.breaksA()),
                    "fuse below its current"));
        }
        faults.add(cable(
                STRUNG,
                FireCheck.ARRAY,
                "a 58 V fuse on the roof",
                c -> Planted.fuse(c, c.fuseA(), 58, c.breaksA()),
                "fuse volts"));
        faults.add(cable(
                STRUNG,
                FireCheck.VEHICLE_SIDE,
                "a blade of 1 kA on the starter battery",
                c -> Planted.fuse(c, c.fuseA(), c.fuseV(), 1000),
                "fuse breaks too little"));
        faults.add(cable(
                STRUNG,
                FireCheck.VEHICLE_SIDE,
                "a 24 V fuse on a 24 V vehicle",
                c -> Planted.fuse(c, c.fuseA(), 24, c.breaksA()),
                "fuse volts"));
        faults.add(cable(
                LARGE,
                FireCheck.MAIN,
                "a 2 kA strip on a large lithium bank",
                c -> Planted.fuse(c, c.fuseA(), c.fuseV(), 2000),
                "fuse breaks too little"));
        faults.add(cable(
                LARGE,
                "shore charger",
                "a 2 A fuse",
                c -> Planted.fuse(c, 2, c.fuseV(), c.breaksA()),
                "fuse below its current"));
        faults.add(cable(
                LARGE,
                "shore charger",
                "30 A of blade on 0.5 mm2",
                c -> Planted.bladed(c, 30, 0.5, 105),
                "burns before its fuse opens"));
        faults.add(cable(
                LARGE,
                "shore charger",
                "100 A of blade on 4 mm2",
                c -> Planted.bladed(c, 100, 4, 105),
                "burns before its fuse opens"));
        faults.add(cable(
                LARGE,
                "shore charger",
                "40 A of blade on 1.5 mm2 of 90 C",
                c -> Planted.bladed(c, 40, 1.5, 90),
                "burns before its fuse opens"));
        return faults;
    }

    private static List<Fault> ofStrings() {
        return List.of(
                cable(
                                STRUNG,
                                FireCheck.STRING,
                                "a fuse of 20 A, above the module's label",
                                c -> Planted.fuse(c, 20, c.fuseV(), c.breaksA()),
                                "")
                        .named("strings: rating of their fuse"),
                cable(
                                STRUNG,
                                FireCheck.STRING,
                                "a fuse of 5 A, below 1.56 times its short circuit",
                                c -> Planted.fuse(c, 5, c.fuseV(), c.breaksA()),
                                "")
                        .named("strings: rating of their fuse"),
                cable(STRUNG, FireCheck.STRING, "one fuse for all", c -> Planted.times(c, 1), "")
                        .named("strings: not a fuse for each"),
                new Fault(
                        "strings without a fuse",
                        Planted.without(STRUNG, FireCheck.STRING),
                        "strings: no fuse of their own"),
                new Fault(
                        "single modules in parallel",
                        Planted.strung(STRUNG, 1),
                        "strings: not the array, or not equal"),
                new Fault(
                        "a colder morning than the controller's fuse stands",
                        Planted.colder(
                                Planted.with(STRUNG, FireCheck.ARRAY, c -> Planted.fuse(c, c.fuseA(), 66, c.breaksA())),
                                -30),
                        "array to charge controller: fuse volts"),
                new Fault(
                        "one cable for several controllers",
                        Planted.with(STRUNG, CONTROLLER, c -> Planted.times(c, 7)),
                        "controller: its own cables"),
                new Fault(
                        "the alternator's second circuit left out",
                        Planted.without(STRUNG, FireCheck.VEHICLE_SIDE),
                        "alternator: not two circuits"),
                new Fault("the house side left out", Planted.without(STRUNG, HOUSE), "alternator: not two circuits"),
                new Fault(
                        "60 A off an alternator of 100 A",
                        Planted.charging(STRUNG, 60),
                        "alternator: asked for more than half of its label"),
                new Fault(
                        "the vehicle side reckoned at house volts",
                        Planted.with(STRUNG, FireCheck.VEHICLE_SIDE, c -> Planted.carrying(c, 20)),
                        "alternator: input current at the lowest volts"));
    }

    private static List<Fault> ofBatteries() {
        return List.of(
                new Fault(
                        "parallel batteries without fuses",
                        Planted.without(LARGE, FireCheck.BATTERY),
                        "batteries: no fuse of their own"),
                new Fault(
                        "a fuse for one of them",
                        Planted.with(LARGE, FireCheck.BATTERY, c -> Planted.times(c, 1)),
                        "batteries: not a fuse for each"),
                new Fault(
                        "their fuses too small together",
                        Planted.with(
                                LARGE,
                                FireCheck.BATTERY,
                                c -> Planted.fuse(c, c.currentA() / 4, c.fuseV(), c.breaksA())),
                        "batteries: fuses below the main current"),
                cable(
                        LARGE,
                        FireCheck.BATTERY,
                        "a fuse that breaks 1 kA",
                        c -> Planted.fuse(c, c.fuseA(), c.fuseV(), 1000),
                        "fuse breaks too little"));
    }

    private static List<Fault> ofTheBank() {
        return List.of(
                new Fault("2 kW out of 66 Ah", Planted.bank(LARGE, 66, 0), "drawn too hard"),
                new Fault(
                        "a short of 80 kA by the maker",
                        Planted.bank(STRUNG, STRUNG.capacityAh(), 80_000),
                        "battery main: fuse breaks too little"),
                new Fault("200 A of engine into the bank", Planted.charging(STRUNG, 200), "charged too hard"),
                new Fault(
                        "a main of 1 mm2",
                        Planted.with(LARGE, FireCheck.MAIN, c -> Planted.thinner(c, 40)),
                        "drop to the inverter"),
                new Fault(
                        "thin cables to the fuse box",
                        Planted.with(LARGE, FireCheck.DISTRIBUTION, c -> Planted.thinner(c, 12)),
                        "drop to the loads"),
                new Fault(
                        "thin cables of each battery",
                        Planted.with(LARGE, FireCheck.BATTERY, c -> Planted.thinner(c, 60)),
                        "drop to the inverter"));
    }

    private static List<Fault> ofMains() {
        return List.of(
                mains("no residual-current device", m -> people(m, 0, m.leadMm2(), false), "mains: residual current"),
                mains("one of 300 mA", m -> people(m, 0.3, m.leadMm2(), false), "mains: residual current"),
                mains(
                        "neutral bonded in the vehicle on shore",
                        m -> people(m, m.opensA(), m.leadMm2(), true),
                        "mains: neutral bonded on shore"),
                mains("a lead of 1 mm2", m -> people(m, m.opensA(), 1, false), "mains: lead too thin for its inlet"),
                mains(
                        "30 mA at 120 V",
                        m -> new BuiltDesign.Mains(120, 0.03, m.inletA(), 10, false, List.of()),
                        "mains: residual current"),
                line(
                        "a breaker of 2 A",
                        l -> new BuiltDesign.AcLine(l.name(), l.currentA(), 2, l.mm2()),
                        "breaker below its current"),
                line(
                        "no breaker",
                        l -> new BuiltDesign.AcLine(l.name(), l.currentA(), 0, l.mm2()),
                        "breaker below its current"),
                line(
                        "16 A on 1 mm2",
                        l -> new BuiltDesign.AcLine(l.name(), l.currentA(), 16, 1),
                        "too thin for its breaker"),
                line(
                        "63 A on 2.5 mm2",
                        l -> new BuiltDesign.AcLine(l.name(), l.currentA(), 63, 2.5),
                        "too thin for its breaker"));
    }

    private static Fault mains(String name, UnaryOperator<BuiltDesign.Mains> change, String found) {
        return new Fault("mains: " + name, Planted.mains(LARGE, change), found);
    }

    private static Fault line(String name, UnaryOperator<BuiltDesign.AcLine> change, String found) {
        String first = LARGE.mains().lines().get(0).name();
        return mains(
                name,
                m -> new BuiltDesign.Mains(
                        m.volts(),
                        m.opensA(),
                        m.inletA(),
                        m.leadMm2(),
                        false,
                        List.of(change.apply(m.lines().get(0)))),
                first + ": " + found);
    }

    private static BuiltDesign.Mains people(BuiltDesign.Mains mains, double opensA, double leadMm2, boolean bonded) {
        return new BuiltDesign.Mains(mains.volts(), opensA, mains.inletA(), leadMm2, bonded, mains.lines());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void isFound(String name, BuiltDesign unsafe, String found) {
        assertThat(all(unsafe)).as(name).contains(found);
    }

    @Test
    void theDesignsAreSoundWithoutThem() {
        assertThat(all(STRUNG)).isEmpty();
        assertThat(all(LARGE)).isEmpty();
        assertThat(faults()).hasSizeGreaterThanOrEqualTo(50);
    }

    private static List<String> all(BuiltDesign design) {
        List<String> found = new ArrayList<>(FireCheck.of(design));
        found.addAll(BankCheck.of(design, 50, design.busV() == 48 ? 500 : 2000, NO_SETTING, false));
        found.addAll(MainsCheck.of(design));
        return found;
    }

    /** 12 V, more than 500 Ah of batteries side by side, a hob of 2 kW, five hours a day at a 10 A hookup. */
    private static BuiltDesign large() {
        NothingBurnsTest.Question question = new NothingBurnsTest.Question(
                Chemistry.LFP,
                12,
                12,
                OptionalDouble.of(150),
                OptionalDouble.of(0),
                OptionalDouble.empty(),
                0,
                2000,
                15,
                new NothingBurnsTest.Stated(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(230),
                        OptionalDouble.of(10),
                        5));
        SystemBrief brief = question.brief();
        List<Load> loads = new ArrayList<>(brief.loads());
        loads.add(Load.dc("pump of the heating", 180, 24));
        return question.built(SystemSizer.size(new SystemBrief(
                        brief.at(), loads, brief.trip(), brief.system(), brief.target(), brief.sampling()))
                .result());
    }
}
