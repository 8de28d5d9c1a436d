package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wayside.sizing.brief.Ambient;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BuiltSystem;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.Compartment;
import wayside.sizing.brief.DutyPoint;
import wayside.sizing.brief.EnduranceBrief;
import wayside.sizing.brief.EnergyBrief;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.brief.Place;
import wayside.sizing.brief.RunningPower;
import wayside.sizing.brief.Sampling;
import wayside.sizing.brief.Stay;
import wayside.sizing.brief.Supply;
import wayside.sizing.brief.Surge;
import wayside.sizing.brief.Tier;
import wayside.sizing.brief.Trip;
import wayside.sizing.brief.Window;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.endurance.Endurance;
import wayside.sizing.endurance.WhatHelps;
import wayside.sizing.inverter.InverterLoss;
import wayside.sizing.solar.epw.EpwReader;
import wayside.sizing.solar.epw.SyntheticYear;
import wayside.sizing.solar.epw.TypicalYear;
import wayside.sizing.trace.Parameter;

/**
 * Each change that is told, made and asked for again in the same runs, has the chance that was told, to the last run. The trips
 * are invented.
 */
class ChangesComeTrueTest {
    private static final Place PLACE = Place.of(45, 7);
    private static final OptionalDouble OPEN = OptionalDouble.empty();
    private static final Load FRIDGE = Load.dc("fridge", 45, 24)
            .withAmbientDuty(new DutyPoint(10, 0.2), new DutyPoint(20, 0.3), new DutyPoint(35, 0.6));

    private static final EnduranceBrief INVERTER_LEFT_OPEN = brief(
            built(8000, 150, InverterSpec.OPEN, 20, 0),
            Trip.of(Stay.of(PLACE, 4, 5).driving(0.3), Stay.of(Place.of(50, 8), 3, 3)),
            FRIDGE,
            Load.ac("hob", 1200, 0.25),
            Load.ac("laptop", 60, 3).of(Tier.COMFORT));
    private static final EnduranceBrief INVERTER_GIVEN = brief(
            built(
                    3300,
                    200,
                    new InverterSpec(
                            At.ROOT.field("inverter"), OptionalDouble.of(900), OPEN, OptionalDouble.of(14), OPEN, OPEN),
                    0,
                    0),
            Trip.of(Stay.of(PLACE, 5, 7)),
            FRIDGE,
            Load.ac("heater", 300, 1.04),
            Load.dc("light", 12, 4));
    private static final EnduranceBrief FLAT_EFFICIENCY_AND_A_HOOKUP = brief(
            built(4500, 200, InverterSpec.OPEN.withEfficiency(0.85).onFor(9), 0, 200),
            Trip.of(Stay.of(PLACE, 9, 6).hookedUp(1)),
            byAmps("freezer", Supply.AC, 0.7, 120).withDuty(0.5).withSurge(new Surge.Factor(4)),
            Load.dc("phone", 10, 2).times(3));
    private static final EnduranceBrief A_SIDEWAYS_ROOF_IN_FROST = brief(
            new BuiltSystem(
                    At.ROOT.field("system"),
                    24,
                    Chemistry.LFP,
                    2000,
                    OptionalDouble.of(600),
                    PanelMount.of(0, 90, 0.1),
                    OptionalDouble.of(15),
                    OptionalDouble.of(300),
                    InverterSpec.OPEN,
                    OptionalDouble.of(2)),
            Trip.of(Stay.of(PLACE, 3, 6).at(new Ambient(-3, 10)).driving(0.5).hookedUp(0.5)),
            Load.dc("furnace", 25, 12),
            Load.ac("kettle", 1500, 0.2).during(new Window(420, 440)));

    private static List<Named<EnduranceBrief>> questions() {
        return List.of(
                Named.of("inverter left open", INVERTER_LEFT_OPEN),
                Named.of("inverter given", INVERTER_GIVEN),
                Named.of("flat efficiency, amperes and a hookup", FLAT_EFFICIENCY_AND_A_HOOKUP),
                Named.of("a sideways roof in frost", A_SIDEWAYS_ROOF_IN_FROST));
    }

    private static EnduranceBrief brief(BuiltSystem system, Trip trip, Load... loads) {
        return EnduranceBrief.of(system, trip, loads).in(Sampling.of(400, 3));
    }

    private static BuiltSystem built(
            double nominalWh, double solarW, InverterSpec inverter, double alternatorA, double shoreW) {
        return new BuiltSystem(
                At.ROOT.field("system"),
                12,
                Chemistry.LFP,
                nominalWh,
                OptionalDouble.of(solarW),
                PanelMount.OPEN,
                OptionalDouble.of(alternatorA),
                OptionalDouble.of(shoreW),
                inverter,
                OptionalDouble.of(3));
    }

    private static Load byAmps(String name, Supply supply, double currentA, double voltageV) {
        return Load.dc(name, 1, 24).suppliedBy(supply).drawing(new RunningPower.Amps(currentA, voltageV));
    }

    /** The inverter that stands in the vehicle, as its figures are told by the energy budget. */
    private static EnduranceBrief withItsInverter(EnduranceBrief brief) {
        InverterSpec asked = brief.system().inverter();
        EnergyBudget budget = EnergyBudgetSizer.size(
                        EnergyBrief.of(brief.loads().toArray(Load[]::new)).through(asked))
                .result();
        InverterLoss loss = budget.inverterLoss().orElseThrow();
        return through(
                brief,
                new InverterSpec(
                        asked.at(),
                        OptionalDouble.of(budget.inverterRating()
                                .orElseThrow()
                                .continuousW()
                                .value()),
                        OPEN,
                        OptionalDouble.of(loss.idlePowerW().value()),
                        asked.efficiency(),
                        asked.hoursPerDay()));
    }

    private static EnduranceBrief through(EnduranceBrief brief, InverterSpec inverter) {
        return with(
                brief,
                system -> new BuiltSystem(
                        At.ROOT.field("system"),
                        system.busVoltageV(),
                        system.chemistry(),
                        system.nominalEnergyWh(),
                        system.solarPowerW(),
                        system.panel(),
                        system.alternatorChargerA(),
                        system.shoreChargerW(),
                        inverter,
                        system.standbyW()));
    }

    private static EnduranceBrief sized(EnduranceBrief brief, double times, double moreW) {
        return with(
                brief,
                system -> new BuiltSystem(
                        At.ROOT.field("system"),
                        system.busVoltageV(),
                        system.chemistry(),
                        system.nominalEnergyWh() * times,
                        OptionalDouble.of(system.arrayW() + moreW),
                        system.panel(),
                        system.alternatorChargerA(),
                        system.shoreChargerW(),
                        system.inverter(),
                        system.standbyW()));
    }

    private static EnduranceBrief tilted(EnduranceBrief brief) {
        return with(
                brief,
                system -> new BuiltSystem(
                        At.ROOT.field("system"),
                        system.busVoltageV(),
                        system.chemistry(),
                        system.nominalEnergyWh(),
                        system.solarPowerW(),
                        new PanelMount(
                                system.panel().at(),
                                OptionalDouble.of(30),
                                OPEN,
                                system.panel().shadedShare()),
                        system.alternatorChargerA(),
                        system.shoreChargerW(),
                        system.inverter(),
                        system.standbyW()));
    }

    private static EnduranceBrief with(EnduranceBrief brief, UnaryOperator<BuiltSystem> change) {
        return new EnduranceBrief(
                brief.at(),
                change.apply(brief.system()),
                brief.loads(),
                brief.trip(),
                brief.initialStateOfCharge(),
                brief.bankPlacement(),
                brief.acceptedChance(),
                brief.sampling());
    }

    private static EnduranceBrief loads(EnduranceBrief brief, UnaryOperator<Load> change) {
        EnduranceBrief same = withItsInverter(brief);
        return new EnduranceBrief(
                brief.at(),
                same.system(),
                brief.loads().stream().map(change).toList(),
                brief.trip(),
                brief.initialStateOfCharge(),
                brief.bankPlacement(),
                brief.acceptedChance(),
                brief.sampling());
    }

    private static EnduranceBrief stays(EnduranceBrief brief, UnaryOperator<Stay> change) {
        return brief.on(new Trip(
                brief.trip().at(), brief.trip().stays().stream().map(change).toList()));
    }

    private static EnduranceBrief made(WhatHelps change, EnduranceBrief brief) {
        return switch (change.code()) {
            case "more-panel" -> sized(brief, 1, 100);
            case "more-battery" -> sized(brief, 1.5, 0);
            case "tilt-panel" -> tilted(brief);
            case "warmer-battery" -> brief.in(brief.bankPlacement().in(Compartment.CABIN));
            case "heated-battery" -> brief.in(brief.bankPlacement().heated(figure(change, "power")));
            case "less-load" ->
                loads(
                        brief,
                        load -> change.change().find("load").equals(Optional.of(Parameter.text("load", load.name())))
                                ? load.drawing(0.8)
                                : load);
            case "inverter-off" -> through(brief, brief.system().inverter().onFor(hours(change)));
            case "more-driving" -> stays(brief, stay -> stay.driving(stay.drivingHours() + 1));
            case "more-hookup" -> stays(brief, stay -> stay.hookedUp(stay.hookupHours() + 1));
            default -> throw new IllegalArgumentException(change.code());
        };
    }

    private static double hours(WhatHelps change) {
        return figure(change, "hours");
    }

    private static double figure(WhatHelps change, String parameter) {
        return ((Parameter.Figure) change.change().find(parameter).orElseThrow())
                .quantity()
                .value();
    }

    private static Endurance result(EnduranceBrief brief) {
        return EnduranceSimulator.simulate(brief).result();
    }

    private static double chance(EnduranceBrief brief) {
        return result(brief).chance().value().value();
    }

    @ParameterizedTest
    @MethodSource("questions")
    void eachChangeComesTrue(EnduranceBrief asked) {
        Endurance told = result(asked);
        assertThat(told.whatHelps()).hasSizeGreaterThan(2);
        for (WhatHelps change : told.whatHelps()) {
            assertThat(chance(made(change, asked)))
                    .as(change.code())
                    .isEqualTo(change.chanceOfRunningFlat().value());
            assertThat(change.chanceWithout().value())
                    .isEqualTo(told.chance().value().value());
        }
    }

    @Test
    void everyKindOfChangeIsTried() {
        List<String> codes = new ArrayList<>();
        for (Named<EnduranceBrief> question : questions()) {
            result(question.getPayload()).whatHelps().forEach(change -> codes.add(change.code()));
        }
        assertThat(codes)
                .contains(
                        "more-panel",
                        "more-battery",
                        "tilt-panel",
                        "heated-battery",
                        "warmer-battery",
                        "less-load",
                        "inverter-off",
                        "more-driving",
                        "more-hookup");
    }

    @ParameterizedTest
    @MethodSource("questions")
    void theLoadsThatItWouldCarryAreCarriedAndAFewMoreAreNot(EnduranceBrief asked) {
        double factor = result(asked).loadFactor().value();
        if (factor > 0) {
            assertThat(chance(loads(asked, load -> load.drawing(factor)))).isLessThanOrEqualTo(0.05);
        }
        double step = factor < 1 ? 1.0 / 2048 : 15.0 / 2048;
        assertThat(chance(loads(asked, load -> load.drawing(factor + step)))).isGreaterThan(0.05);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void theNightsThatItWouldLastArePassedAndOneMoreIsNot(EnduranceBrief asked) {
        Endurance told = result(asked);
        int nights = told.nights().map(value -> (int) value.value()).orElse(0);
        assertThat(told.nightsRuns().value()).isEqualTo(400);
        if (nights > 0) {
            assertThat(chance(asked.on(asked.trip().lasting(nights)))).isLessThanOrEqualTo(0.05);
        }
        if (!told.nightsAreMore()) {
            assertThat(chance(asked.on(asked.trip().lasting(nights + 1)))).isGreaterThan(0.05);
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    void eachChangeComesTrueInTheHoursOfATypicalYear(EnduranceBrief asked) {
        TypicalYear year = EpwReader.read(SyntheticYear.lines(0.4, false).iterator());
        Endurance told = EnduranceSimulator.simulate(asked, year).result();
        for (WhatHelps change : told.whatHelps()) {
            Endurance again =
                    EnduranceSimulator.simulate(made(change, asked), year).result();
            assertThat(again.chance().value().value())
                    .as(change.code())
                    .isEqualTo(change.chanceOfRunningFlat().value());
        }
    }

    // Too long for all of its runs to be compared: the first ones are, and the chance without a change is theirs.
    @Test
    void onALongTripTheRunsAreToldInWhichChangesAreCompared() {
        EnduranceBrief asked =
                INVERTER_LEFT_OPEN.on(Trip.of(Stay.of(PLACE, 7, 300))).in(Sampling.of(600, 0));
        Endurance told = result(asked);
        int runs = (int) told.comparedRuns().value();
        assertThat(told.runs().value()).isEqualTo(600);
        assertThat(runs).isBetween(100, 599);
        EnduranceBrief inTheSameRuns = asked.in(Sampling.of(runs, 0));
        WhatHelps first = told.whatHelps().get(0);
        assertThat(chance(inTheSameRuns)).isEqualTo(first.chanceWithout().value());
        assertThat(chance(made(first, inTheSameRuns)))
                .isEqualTo(first.chanceOfRunningFlat().value());
    }
}
