package wayside.sizing.reference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The tables of mains circuits against a published one. */
class MainsTablesTest {
    // Source: NFPA 70-2023, table 310.16, copper at 60 C; areas of the round wire.
    @Test
    void at120VoltsEachConductorCarriesItsBreaker() {
        ReferenceTable ampacity = ReferenceTables.table("nfpa70-2023/table-310-16");
        for (ReferenceTable.Row row :
                ReferenceTables.table("practice/ac-circuits").rows()) {
            if (row.number("voltage_V") == 120) {
                double carried = ampacity.rows().stream()
                        .filter(gauge -> areaMm2(gauge.key()) <= 1.01 * row.number("area_mm2"))
                        .mapToDouble(gauge -> gauge.findNumber("copper_60C_A").orElse(0))
                        .max()
                        .orElse(0);
                assertThat(carried).as(row.key()).isGreaterThanOrEqualTo(row.number("breaker_A"));
            }
        }
    }

    // Every row of a larger breaker has no less copper; the lead of 16 A as caravans have it by IEC 60364-7-721, 2.5
    // mm2.
    @Test
    void moreCurrentNeverHasLessCopper() {
        double volts = 0;
        double breaker = 0;
        double area = 0;
        for (ReferenceTable.Row row :
                ReferenceTables.table("practice/ac-circuits").rows()) {
            if (row.number("voltage_V") == volts) {
                assertThat(row.number("breaker_A")).isGreaterThan(breaker);
                assertThat(row.number("area_mm2")).isGreaterThanOrEqualTo(area);
            }
            volts = row.number("voltage_V");
            breaker = row.number("breaker_A");
            area = row.number("area_mm2");
        }
        assertThat(ReferenceTables.table("practice/hookup-inlets")
                        .row("230 V 16 A")
                        .number("lead_mm2"))
                .isEqualTo(2.5);
    }

    private static double areaMm2(String awg) {
        int n = awg.endsWith("/0") ? 1 - Integer.parseInt(awg.substring(0, awg.length() - 2)) : Integer.parseInt(awg);
        double mm = 0.127 * Math.pow(92, (36 - n) / 39.0);
        return Math.PI * mm * mm / 4;
    }
}
