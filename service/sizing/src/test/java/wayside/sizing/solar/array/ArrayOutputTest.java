package wayside.sizing.solar.array;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.solar.plane.IncidenceModifier;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** Glass, heat and power of a panel against printed figures. */
class ArrayOutputTest {
    // Source: pvlib-python, tests of its incidence modifiers: ASHRAE with b0 0.05 at 22.5, 45 and 67.5 degrees; Fresnel
    // with n 1.526, K 4 /m, L 2 mm (De Soto 2006).
    @ParameterizedTest
    @CsvSource({"22.5, 0.99588, 0.999262", "45, 0.97929, 0.987978", "67.5, 0.91934, 0.889400"})
    void incidenceModifiersAgree(double degrees, double ashrae, double fresnel) {
        double cos = Math.cos(Math.toRadians(degrees));
        assertThat(IncidenceModifier.ashrae(cos, 0.05)).isCloseTo(ashrae, within(1e-5));
        assertThat(IncidenceModifier.fresnel(cos)).isCloseTo(fresnel, within(1e-6));
    }

    @Test
    void lightFromBehindOrAlongTheGlassDoesNotEnter() {
        assertThat(IncidenceModifier.fresnel(-0.1)).isZero();
        assertThat(IncidenceModifier.fresnel(0)).isZero();
        assertThat(IncidenceModifier.fresnel(1)).isEqualTo(1);
        assertThat(IncidenceModifier.ashrae(0.01, 0.05)).isZero();
        assertThat(IncidenceModifier.ofGround(0)).isCloseTo(0, within(1e-9));
    }

    // Source: pvlib-python, tests of the Sandia cell temperature (SAND2004-3535): 900 W/m2, 20 C, 5 m/s, open rack:
    // 43.509 C.
    @Test
    void cellTemperatureAgrees() {
        double rise = CellTemperature.riseKPerWm2("open-rack", wind(5)).value();
        assertThat(CellTemperature.cellC(20, 900, rise)).isCloseTo(43.509, within(0.001));
    }

    // Source: SAND2004-3535, eq. 11 and table 1 evaluated by hand: 900 W/m2, 20 C, 1 m/s, insulated back:
    // 20 + 900 exp(-2.81 - 0.0455) = 71.8 C.
    @Test
    void aPanelGluedToTheRoofRunsHot() {
        double rise = CellTemperature.riseKPerWm2(CellTemperature.INSULATED_BACK, wind(1))
                .value();
        assertThat(CellTemperature.cellC(20, 900, rise)).isCloseTo(71.8, within(0.1));
    }

    // Source: pvlib-python, tests of the linear array model of NREL/TP-6A20-62641: 900 W/m2, 30 C, 100 W, -0.003 /K:
    // 88.65 W.
    @Test
    void powerAgrees() {
        assertThat(ArrayOutput.powerW(100, 900, 30, -0.003, 1)).isCloseTo(88.65, within(1e-9));
    }

    // Source: NREL/TP-6A20-62641: the default losses with availability multiply to 14.08 %.
    @Test
    void theTableOfLossesMultipliesToItsPrintedTotal() {
        double left = 1;
        for (ReferenceTable.Row row :
                ReferenceTables.table("nrel-tp-6a20-62641-2014/array-losses").rows()) {
            left *= 1 - row.number("loss_percent") / 100;
        }
        assertThat(100 * (1 - left)).isCloseTo(14.08, within(0.005));
    }

    @Test
    void aMeltingPanelGivesNothingRatherThanLessThanNothing() {
        assertThat(ArrayOutput.powerW(100, 1000, 500, -0.004, 1)).isZero();
    }

    private static Derived wind(double metresPerSecond) {
        return value(metresPerSecond, Unit.METRE_PER_SECOND);
    }

    private static Derived value(double value, Unit unit) {
        return Derived.given("test", value, unit, "/test");
    }
}
