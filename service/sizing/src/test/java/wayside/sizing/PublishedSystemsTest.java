package wayside.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.brief.InverterSpec;
import wayside.sizing.brief.Load;
import wayside.sizing.brief.Supply;
import wayside.sizing.brief.Surge;
import wayside.sizing.laws.Laws;
import wayside.sizing.recommendation.Recommendation;
import wayside.sizing.storage.ChemistryData;
import wayside.sizing.system.InverterChoice;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.trace.Shortfall;

/**
 * Published sizing examples through our own door. Ours adds two things that none of them counts: a fifth of room for loads
 * to come (1.2) and the bank's discharge efficiency; the checks take them out again and compare the rest.
 */
class PublishedSystemsTest {
    private static final double WARM_C = 26.7;
    private static final double ROOM = 1.2;

    private static SizedSystem size(Chemistry chemistry, double busV, double days, double ambientC, Load... loads) {
        return SystemSizer.size(Briefs.brief(
                        Briefs.wishes(chemistry, busV, 0, 0, InverterSpec.OPEN).feedingDcAt(busV),
                        days,
                        Briefs.stay(5, ambientC),
                        loads))
                .result()
                .system();
    }

    private static double comparableWh(SizedSystem system) {
        ChemistryData data = system.battery().bank().data();
        return system.battery().neededWh().value() * data.dischargeEfficiency().value() / ROOM;
    }

    // Source: widely copied lecture "Design of PV System": lamp 18 W 4 h, fan 60 W 2 h, fridge 75 W 24 h at half duty
    // and four times at its start; printed 1,092 Wh a day, 1,419.6 Wh from the array, four modules of 110 W at 3.43
    // Wh/W, inverter at least 198.9 W and 378 W at the start.
    @Test
    void agreesWithTheLecture() {
        SizedSystem system = SystemSizer.size(Briefs.brief(
                        Briefs.wishes(
                                Chemistry.LFP,
                                12,
                                0,
                                0,
                                InverterSpec.OPEN.withIdle(0).withEfficiency(1)),
                        3,
                        Briefs.stay(5, WARM_C),
                        Load.ac("lamp", 18, 4),
                        Load.ac("fan", 60, 2),
                        Load.ac("fridge", 75, 24).withDuty(0.5).withSurge(new Surge.Factor(4))))
                .result()
                .system();
        assertThat(system.energyBudget().dailyTotalWh().value()).isCloseTo(1092, within(1e-9));
        // Theirs is 1.3 for all losses; ours is 1.2 for loads to come and 1.035 for the bank's round trip.
        double fromTheArray = system.arrayNeed().worst().needWh().value();
        assertThat(fromTheArray).isCloseTo(1419.6, within(0.05 * 1419.6));
        assertThat(Math.ceil(fromTheArray / 3.43 / 110)).isEqualTo(4);
        assertThat(system.inverter().orElseThrow().demand().surgePowerW().value())
                .isCloseTo(378, within(1e-9));
        assertThat(system.inverter().orElseThrow().rating().continuousW().value())
                .isGreaterThanOrEqualTo(198.9);
    }

    // Source: trade article restating a simplified IEEE method: 1,000 Wh a day, 2.5 days, half depth, 4.4 C with 1.3;
    // printed 6,500 Wh.
    @Test
    void agreesWithTheColdBank() {
        SizedSystem system = size(Chemistry.FLOODED, 12, 2.5, 4.4, Load.dc("all", 100, 10));
        assertThat(comparableWh(system)).isCloseTo(6500, within(0.1));
    }

    // Source: trade page, off-grid house: 15.75 kWh a day at 48 V, half depth, losses 1.15, one day; printed 754.4 Ah
    // after rounding 328.125 Ah to 328.
    @Test
    void agreesWithTheHouse() {
        SizedSystem system = size(Chemistry.FLOODED, 48, 1, WARM_C, Load.dc("all", 656.25, 24));
        assertThat(comparableWh(system) * 1.15 / 48).isCloseTo(754.4, within(0.3));
        assertThat(system.energyBudget().dailyTotalAh().value()).isCloseTo(328, within(0.2));
    }

    // Source: trade article, LFP home: 5 kWh a day, two days, eight tenths; printed 12.5 kWh.
    @Test
    void agreesWithTheLithiumHome() {
        SizedSystem system = size(Chemistry.LFP, 48, 2, WARM_C, Load.dc("all", 500, 10));
        assertThat(comparableWh(system)).isCloseTo(12500, within(0.1));
    }

    // Source: trade article on sizing a module system, small cabin: 1,130 Wh a day, 1.3 kWh with 15 % in hand.
    // Ours keeps 20 % in hand.
    @Test
    void agreesWithTheCabin() {
        SizedSystem system = size(
                Chemistry.LFP,
                12,
                1,
                WARM_C,
                Load.dc("LED", 10, 5).times(4),
                Load.dc("laptop", 60, 4),
                Load.dc("router", 10, 24),
                Load.dc("fridge", 50, 8),
                Load.dc("pump", 100, 0.5));
        assertThat(comparableWh(system) * 0.8).isCloseTo(1130, within(0.1));
        assertThat(1130 * 1.15).isCloseTo(1300, within(1.0));
    }

    // Source: trade article, three bad days: lighting 50 W for 6 h, printed 1,800 Wh at half depth; AC loads of 250,
    // 500 and 60 W, printed 810 W together and an inverter of 2,000 W for the fridge's start.
    @Test
    void agreesWithTheThreeBadDays() {
        SizedSystem lights = size(Chemistry.AGM, 12, 3, WARM_C, Load.dc("lighting", 50, 6));
        assertThat(comparableWh(lights)).isCloseTo(1800, within(0.1));
        SizedSystem kitchen = size(
                Chemistry.AGM,
                12,
                1,
                WARM_C,
                Load.ac("fridge", 250, 8).withSurge(new Surge.Factor(5)),
                Load.ac("pump", 500, 0.5).withSurge(new Surge.Factor(3)),
                Load.ac("television", 60, 2));
        InverterChoice inverter = kitchen.inverter().orElseThrow();
        assertThat(inverter.demand().peakPowerW().value()).isCloseTo(810, within(1e-9));
        assertThat(inverter.rating().surgeW().value()).isBetween(1810.0, 2 * 2000.0);
    }

    // Source: project sheet of an aid organisation, village hall: ten fans of 36 W and ten lamps of 12 W for 6 h, 12 V;
    // printed 2,880 Wh a day, one battery of 110 Ah and two panels of 250 W. Negative: it counts depth twice, rounds
    // 1.136 batteries and 2.3 panels down, and takes twelve hours of day for sun hours.
    @Test
    void theVillageHallRunsFlat() {
        Recommendation hall = SystemSizer.size(Briefs.brief(
                        Briefs.wishes(Chemistry.FLOODED, 12, 110 * 12, 2 * 250, InverterSpec.OPEN),
                        1,
                        Briefs.stay(4.5, WARM_C),
                        Load.dc("fan", 36, 6).times(10),
                        Load.dc("lamp", 12, 6).times(10)))
                .result();
        assertThat(hall.system().energyBudget().dailyTotalWh().value()).isCloseTo(2880, within(1e-9));
        assertThat(hall.shortfalls()).extracting(Shortfall::code).contains("bank-too-small", "array-too-small");
    }

    // Source: installation guide page: 800 W for 3 h through an inverter of 1,000 W, printed two batteries of 12 V 100
    // Ah and 360 W of panel. Negative: wholly discharged, no inverter loss, array sized by a tenth of the capacity.
    @Test
    void theGuideRunsFlatToo() {
        Recommendation guide = SystemSizer.size(Briefs.brief(
                        Briefs.wishes(Chemistry.FLOODED, 12, 2400, 360, InverterSpec.OPEN.withEfficiency(0.9)),
                        1,
                        Briefs.stay(4.5, WARM_C),
                        Load.dc("load", 800, 3).suppliedBy(Supply.AC)))
                .result();
        assertThat(guide.shortfalls()).extracting(Shortfall::code).contains("bank-too-small", "array-too-small");
        assertThat(guide.system().inverter().orElseThrow().rating().requiredW().value())
                .isCloseTo(1000, within(1e-9));
    }

    // Common practice, no source: a van with a fridge, fans, lights, a laptop, a diesel heater and a small induction
    // hob gets 200 to 400 Ah of LFP, 400 to 800 W of panel, an inverter of 2,000 to 3,000 W and a charger of 30 to 60
    // A.
    @Test
    void anUpfitterWouldNodAtTheRealList() {
        SizedSystem van = SystemSizer.size(RealList.in(7)).result().system();
        assertThat(Laws.of(van).shortfalls()).isEmpty();
        assertThat(van.battery().bank().nominalEnergyWh().value()).isBetween(200 * 12.8, 400 * 12.8);
        assertThat(van.array().orElseThrow().powerW().value()).isBetween(400.0, 800.0);
        assertThat(van.inverter().orElseThrow().rating().continuousW().value()).isBetween(2000.0, 3000.0);
        assertThat(van.chargers().alternator().orElseThrow().chargerPowerW().value())
                .isBetween(30 * 13.0, 60 * 14.0);
        assertThat(van.circuits())
                .extracting(c -> c.duty().name())
                .contains("battery main", "inverter", "distribution");
    }
}
