package wayside.sizing.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** The voltage-drop rule of the small-craft set against printed conductor tables. */
class PrintedDropTablesCheckTest {
    private static final ConductorLabels LABELS = new ConductorLabels("lamp", "any");
    private static final RuleSet RULES = RuleSets.of("abyc-e11");
    private static final Derived ANY_TEMPERATURE = Derived.given("copper", 30, Unit.CELSIUS, "/test");
    private static final ReferenceTable TABLE_8 = ReferenceTables.table("nfpa70-2023/chapter-9-table-8");

    // Source: ABYC E-11, Table IX (3 %), as reprinted, and a chandlery catalogue's 3 % and 10 % tables. These cells
    // come out the same whichever areas the table's maker used, so they must come out here.
    @Test
    void picksThePrintedGaugeInEveryCellThatDoesNotHangOnTheAreas() {
        List<PrintedDropCell> cells = PrintedDropCell.all().stream()
                .filter(cell -> cell.agreement().equals("both"))
                .toList();
        assertThat(cells).hasSize(224);
        assertThat(cells).allSatisfy(cell -> assertThat(thinnestByRules(cell)).isEqualTo(cell.printedAwg()));
    }

    // Source: ABYC E-11, Table IX (3 %), as reprinted. The one exception, 60 ft at 15 A, is printed thinner than the
    // formula allows with either kind of area.
    @Test
    void picksThePrintedGaugeInAllButOneCellOfTableNine() {
        List<PrintedDropCell> cells = cellsOf("abyc-e11-table-ix");
        assertThat(cells).hasSize(81);
        assertThat(cells.stream().filter(cell -> !thinnestByRules(cell).equals(cell.printedAwg())))
                .singleElement()
                .satisfies(cell -> {
                    assertThat(cell.roundTripFt()).isEqualTo(60);
                    assertThat(cell.currentA()).isEqualTo(15);
                    assertThat(Gauge.of(thinnestByRules(cell)).rank())
                            .isGreaterThan(Gauge.of(cell.printedAwg()).rank());
                });
    }

    // Source: the same table. With the areas of round wire (NFPA 70-2023, chapter 9 Table 8) fewer cells agree, which
    // is the ground for the SAE areas that were not seen in print.
    @Test
    void roundWireAreasAgreeWithFewerCellsOfTableNine() {
        long agreeing = cellsOf("abyc-e11-table-ix").stream()
                .filter(cell -> thinnest(cell, PrintedDropTablesCheckTest::roundWireOhmPerKm)
                        .equals(cell.printedAwg()))
                .count();
        assertThat(agreeing).isEqualTo(66);
    }

    // Source: all three printed tables. Cells printed thinner than the formula are unsafe to copy; nothing here may be
    // as thin.
    @Test
    void isNeverAsThinAsAPrintThatBreaksItsOwnFormula() {
        List<PrintedDropCell> unsafe = PrintedDropCell.all().stream()
                .filter(cell -> cell.agreement().equals("smaller"))
                .toList();
        assertThat(unsafe).hasSize(7);
        assertThat(unsafe)
                .allSatisfy(cell -> assertThat(Gauge.of(thinnestByRules(cell)).rank())
                        .isGreaterThan(Gauge.of(cell.printedAwg()).rank()));
    }

    // Source: all three printed tables; the count of cells that this project agrees with, table by table.
    @Test
    void agreesWithSoManyCellsOfEachTable() {
        Map<String, Long> agreeing = PrintedDropCell.all().stream()
                .filter(cell -> thinnestByRules(cell).equals(cell.printedAwg()))
                .collect(Collectors.groupingBy(PrintedDropCell::table, TreeMap::new, Collectors.counting()));
        assertThat(agreeing)
                .containsExactlyInAnyOrderEntriesOf(
                        Map.of("abyc-e11-table-ix", 80L, "chandlery-3", 118L, "chandlery-10", 62L));
    }

    private static List<PrintedDropCell> cellsOf(String table) {
        return PrintedDropCell.all().stream()
                .filter(cell -> cell.table().equals(table))
                .toList();
    }

    private static String thinnestByRules(PrintedDropCell cell) {
        return thinnest(cell, gauge -> RULES.resistanceOhmPerKm(LABELS, gauge, ANY_TEMPERATURE)
                .value());
    }

    private static String thinnest(PrintedDropCell cell, ToDoubleFunction<Gauge> ohmPerKm) {
        return RULES.gauges().stream()
                .filter(gauge ->
                        cell.roundTripM() * cell.currentA() * ohmPerKm.applyAsDouble(gauge) / 1000 <= cell.allowedV())
                .findFirst()
                .map(Gauge::awg)
                .orElse("none of the series");
    }

    private static double roundWireOhmPerKm(Gauge gauge) {
        return 10.75 / TABLE_8.row(gauge.awg()).number("area_cmil") / 0.3048e-3;
    }
}
