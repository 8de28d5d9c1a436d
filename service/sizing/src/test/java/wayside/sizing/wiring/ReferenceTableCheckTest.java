package wayside.sizing.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** The printed tables against the formulas behind them and against each other. */
class ReferenceTableCheckTest {
    private static final double OHM_MM2_PER_KM = 17.241;

    // Row counts as printed; of the gauge series only 18 to 4/0 (14 in the SAE table, which has no 3 AWG).
    @ParameterizedTest
    @CsvSource({
        "astm-b258/awg-diameter, 15",
        "sae-j1127-j1128/minimum-area, 14",
        "nfpa70-2023/chapter-9-table-8, 15",
        "nfpa70-2023/table-310-16, 15",
        "nfpa70-2023/section-240-4-d, 5",
        "nfpa70-2023/table-240-6-a, 31",
        "nfpa70-2023/table-310-15-b-1-1, 16",
        "nfpa70-2020/table-690-31-a-a, 15",
        "nfpa70-2020/table-690-31-a-b, 15",
        "nfpa70-2023/table-310-15-c-1, 7",
        "nfpa70-2020/table-690-7-a, 13",
        "cfr33-183/table-5, 15",
        "abyc-e11/bundling, 5",
        "abyc-e11/interrupt-capacity, 3",
        "iec60228/class-5, 14",
        "iso8820/fuse-links, 4"
    })
    void hasAsManyRowsAsPrinted(String name, int rows) {
        assertThat(ReferenceTables.table(name).rows()).hasSize(rows);
    }

    // Along each table, thicker conductors carry more and resist less.
    @ParameterizedTest
    @CsvSource({
        "sae-j1127-j1128/minimum-area, minimum_area_cmil, 1",
        "nfpa70-2023/chapter-9-table-8, area_cmil, 1",
        "nfpa70-2023/chapter-9-table-8, stranded_ohm_per_kft, -1",
        "nfpa70-2023/table-310-16, copper_60C_A, 1",
        "nfpa70-2023/table-310-16, copper_75C_A, 1",
        "nfpa70-2023/table-310-16, copper_90C_A, 1",
        "nfpa70-2020/table-690-31-a-b, copper_105C_A, 1",
        "nfpa70-2020/table-690-31-a-b, copper_125C_A, 1",
        "cfr33-183/table-5, copper_60C_A, 1",
        "cfr33-183/table-5, copper_75C_A, 1",
        "cfr33-183/table-5, copper_80C_A, 1",
        "cfr33-183/table-5, copper_90C_A, 1",
        "cfr33-183/table-5, copper_105C_A, 1",
        "cfr33-183/table-5, copper_125C_A, 1",
        "cfr33-183/table-5, copper_200C_A, 1",
        "iec60228/class-5, plain_ohm_per_km, -1",
        "iec60228/class-5, tinned_ohm_per_km, -1",
        "nfpa70-2023/table-240-6-a, rating_A, 1"
    })
    void risesOrFallsAlongItsRows(String name, String column, int sign) {
        List<Double> values = ReferenceTables.table(name).rows().stream()
                .flatMap(row -> row.findNumber(column).stream().boxed())
                .map(value -> sign * value)
                .toList();
        assertThat(values).hasSizeGreaterThan(3).isSorted().doesNotHaveDuplicates();
    }

    // Source: 33 CFR 183.425, Table 5, and NFPA 70-2023, Table 310.16: better insulation never carries less.
    @Test
    void betterInsulationNeverCarriesLess() {
        for (Gauge gauge : Gauge.series()) {
            ReferenceTable.Row row = ReferenceTables.table("cfr33-183/table-5").row(gauge.awg());
            assertThat(List.of(60, 75, 80, 90, 105, 125, 200).stream()
                            .map(c -> row.number("copper_" + c + "C_A"))
                            .toList())
                    .isSorted();
        }
    }

    // Source: ASTM B258, d = 0.005 in x 92^((36 - n) / 39), against the circular mils printed in NFPA 70-2023, chapter
    // 9 Table 8. Worst printed rounding: 18 AWG, 1,620 for 1,624.
    @Test
    void gaugeFormulaAgreesWithThePrintedCircularMils() {
        ReferenceTable diameters = ReferenceTables.table("astm-b258/awg-diameter");
        for (ReferenceTable.Row row : diameters.rows()) {
            double inches = 0.005 * Math.pow(92, (36 - row.number("n")) / 39);
            assertThat(row.number("diameter_mm")).isCloseTo(25.4 * inches, within(0.5e-4));
            double printed = ReferenceTables.table("nfpa70-2023/chapter-9-table-8")
                    .row(row.key())
                    .number("area_cmil");
            assertThat(1e6 * inches * inches).isCloseTo(printed, withinPercentage(0.3));
        }
    }

    // Source: NFPA 70-2023, chapter 9 Table 8, against annealed copper of 0.017241 Ohm mm2/m and 0.393 % per kelvin.
    // Solid rows within their rounding; stranded rows 2 % above, the lay of the strands.
    @Test
    void printedResistancesFollowFromCopperAndArea() {
        for (ReferenceTable.Row row :
                ReferenceTables.table("nfpa70-2023/chapter-9-table-8").rows()) {
            double theory = OHM_MM2_PER_KM / Gauge.of(row.key()).roundAreaMm2().value() * (1 + 0.00393 * (75 - 20));
            assertThat(row.number("stranded_ohm_per_kft") / 0.3048).isBetween(theory, 1.03 * theory);
            row.findNumber("solid_ohm_per_kft")
                    .ifPresent(solid -> assertThat(solid / 0.3048).isCloseTo(theory, withinPercentage(0.5)));
            row.findNumber("stranded_ohm_per_km")
                    .ifPresent(metric -> assertThat(row.number("stranded_ohm_per_kft") / 0.3048)
                            .isCloseTo(metric, withinPercentage(0.4)));
        }
    }

    // Source: IEC 60228, class 5: limits that lie 10 to 16 % above copper of the nominal area; tinned above plain.
    @Test
    void classFiveLimitsLieAboveTheNominalArea() {
        for (ReferenceTable.Row row : ReferenceTables.table("iec60228/class-5").rows()) {
            double theory = OHM_MM2_PER_KM / row.number("area_mm2");
            assertThat(row.number("plain_ohm_per_km")).isBetween(1.10 * theory, 1.16 * theory);
            assertThat(row.number("tinned_ohm_per_km")).isGreaterThan(row.number("plain_ohm_per_km"));
        }
    }

    // Source: NFPA 70-2023, Table 310.15(B)(1)(1), and NFPA 70-2020, Table 690.31(A)(a): every printed cell is the heat
    // balance sqrt((Tc - Ta) / (Tc - 30)) at the top of its band, to two digits.
    @Test
    void everyAmbientFactorIsTheHeatBalanceAtTheTopOfItsBand() {
        Map<String, List<Integer>> columns = Map.of(
                "nfpa70-2023/table-310-15-b-1-1", List.of(60, 75, 90), "nfpa70-2020/table-690-31-a-a", List.of(105));
        columns.forEach((name, classes) -> {
            for (ReferenceTable.Row row : ReferenceTables.table(name).rows()) {
                for (int insulation : classes) {
                    double ambient = row.number("ambient_to_C");
                    row.findNumber("factor_" + insulation + "C").ifPresent(factor -> {
                        assertThat(Math.sqrt((insulation - ambient) / (insulation - 30)))
                                .as("%s at %s", insulation, row.key())
                                .isCloseTo(factor, within(0.01));
                        assertThat(heatBalance(insulation, ambient)).isCloseTo(Math.min(1, factor), within(0.01));
                    });
                }
            }
        });
    }

    // Source: 33 CFR 183.425, Table 5 note, 0.85 in engine spaces of 50 C for 105 C insulation; heat balance 0.856.
    @Test
    void engineSpaceFactorIsTheHeatBalance() {
        double printed =
                ReferenceTables.table("cfr33-183/engine-space").row("105").number("factor");
        assertThat(heatBalance(105, 50)).isCloseTo(printed, within(0.01));
    }

    // Source: SAE minimum area of 12 AWG, 5,833 circular mil, read in a reprint; the others lie 1 to 11 % below ASTM
    // B258.
    @Test
    void saeAreasLieALittleBelowTheRoundWire() {
        ReferenceTable sae = ReferenceTables.table("sae-j1127-j1128/minimum-area");
        assertThat(sae.row("12").number("minimum_area_cmil")).isEqualTo(5833);
        for (ReferenceTable.Row row : sae.rows()) {
            double round = ReferenceTables.table("nfpa70-2023/chapter-9-table-8")
                    .row(row.key())
                    .number("area_cmil");
            assertThat(row.number("minimum_area_cmil") / round).isBetween(0.89, 0.99);
        }
    }

    // Source: NFPA 70-2020, Table 690.7(A): bands of 5 K without a gap, factors rising as it gets colder.
    @Test
    void coldFactorsRiseBandByBand() {
        List<ReferenceTable.Row> rows =
                ReferenceTables.table("nfpa70-2020/table-690-7-a").rows();
        for (int i = 1; i < rows.size(); i++) {
            assertThat(rows.get(i).number("ambient_to_C"))
                    .isEqualTo(rows.get(i - 1).number("ambient_from_C") - 1);
            assertThat(rows.get(i).number("factor"))
                    .isGreaterThan(rows.get(i - 1).number("factor"));
        }
    }

    private static double heatBalance(double insulationC, double ambientC) {
        return AmbientFactor.heatBalance("factor", celsius(insulationC), celsius(ambientC))
                .value();
    }

    private static Derived celsius(double value) {
        return Derived.given("temperature", value, Unit.CELSIUS, "/test");
    }
}
