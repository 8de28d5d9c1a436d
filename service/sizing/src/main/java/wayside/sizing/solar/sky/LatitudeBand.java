package wayside.sizing.solar.sky;

import wayside.sizing.reference.ReferenceTable;
import wayside.sizing.reference.ReferenceTables;
import wayside.sizing.solar.plane.SolarCalendar;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Unit;

/** A month of the table of latitude bands: for islands and for the ends of the Earth, where no land cell is near. */
record LatitudeBand(ReferenceTable table, ReferenceTable.Row row) {
    private static final String TABLE = "typical-years-2008/latitude-bands";
    private static final int BAND_DEGREES = 10;
    private static final int HIGHEST = 60;

    /**
     * The band of a latitude; the one of 60 to 70 degrees beyond 70.
     *
     * @param month 1 to 12; the southern hemisphere takes the month six later
     */
    static LatitudeBand of(double latitude, int month) {
        int from = Math.min(HIGHEST, BAND_DEGREES * (int) (Math.abs(latitude) / BAND_DEGREES));
        int north = SolarCalendar.northernMonth(latitude, month);
        ReferenceTable table = ReferenceTables.table(TABLE);
        String key = from + "-" + (from + BAND_DEGREES) + " month " + north;
        return new LatitudeBand(table, table.row(key));
    }

    Derived clearness(String label) {
        return table.cell(label, row, "kt_mean", Unit.SHARE);
    }

    Derived low(String label) {
        return table.cell(label, row, "kt_p10", Unit.SHARE);
    }

    Derived high(String label) {
        return table.cell(label, row, "kt_p90", Unit.SHARE);
    }
}
