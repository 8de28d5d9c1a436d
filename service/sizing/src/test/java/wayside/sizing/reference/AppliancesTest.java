package wayside.sizing.reference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The starter list can be read by whoever fills a load list from it. */
class AppliancesTest {
    private static final ReferenceTable TABLE = ReferenceTables.table("practice/appliances");

    @Test
    void holdsThirtyOrMoreThingsThatCampersKnow() {
        assertThat(TABLE.rows()).hasSizeGreaterThanOrEqualTo(30);
        assertThat(TABLE.rows()).extracting(ReferenceTable.Row::key).doesNotHaveDuplicates();
    }

    @Test
    void everyRowIsALoad() {
        for (ReferenceTable.Row row : TABLE.rows()) {
            assertThat(row.text("supply")).isIn("dc", "ac");
            assertThat(row.number("powerW")).as(row.key()).isBetween(1.0, 2000.0);
            assertThat(row.number("quantity")).isGreaterThanOrEqualTo(1);
            assertThat(row.number("hoursPerDay")).isBetween(0.05, 24.0);
            assertThat(row.findNumber("dutyCycle").orElse(1)).isBetween(0.01, 1.0);
            assertThat(row.number("surgeFactor")).isGreaterThanOrEqualTo(1);
            assertThat(row.text("tier")).isIn("vital", "essential", "comfort");
            assertThat(row.text("ground")).isNotBlank();
        }
    }

    @Test
    void aFridgeRunsLongerInHeat() {
        for (ReferenceTable.Row row : TABLE.rows()) {
            String curve = row.text("ambientDuty");
            if (!curve.isEmpty()) {
                assertRising(curve);
            }
        }
        assertThat(TABLE.row("Compressor fridge 12 V").text("ambientDuty")).isNotEmpty();
    }

    private static void assertRising(String curve) {
        double lastC = -100;
        double lastDuty = 0;
        for (String point : curve.split("/", -1)) {
            String[] pair = point.split(" ", -1);
            assertThat(Double.parseDouble(pair[0])).isGreaterThan(lastC);
            assertThat(Double.parseDouble(pair[1])).isGreaterThan(lastDuty).isLessThanOrEqualTo(1);
            lastC = Double.parseDouble(pair[0]);
            lastDuty = Double.parseDouble(pair[1]);
        }
    }

    // Source: RV magazine, technical column: a microwave of 800 W cooking power draws 1,200 W.
    @Test
    void theMicrowaveIsListedByWhatItDraws() {
        assertThat(TABLE.row("Microwave 800 W").number("powerW")).isEqualTo(1200);
    }
}
