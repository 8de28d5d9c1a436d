package wayside.sizing.solar.plane;

/** Days of the year as the sun formulas count them: 1 January is 1. */
public final class SolarCalendar {
    public static final int MONTHS = 12;

    private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final int[] MEAN_DAY_OF_MONTH = {17, 16, 16, 15, 15, 11, 17, 16, 15, 15, 14, 10};

    private static final int LAST_DAY = 366;
    private static final double[] DECLINATION = new double[LAST_DAY + 1];
    private static final double[] NORMAL_W_M2 = new double[LAST_DAY + 1];

    static {
        for (int n = 1; n <= LAST_DAY; n++) {
            DECLINATION[n] = SunGeometry.spencerDeclination(n);
            NORMAL_W_M2[n] = Extraterrestrial.spencerNormalWm2(n);
        }
    }

    private SolarCalendar() {}

    /** {@link SunGeometry#spencerDeclination} of a day, worked out once [rad]. */
    public static double declination(int n) {
        return DECLINATION[n];
    }

    /** {@link Extraterrestrial#spencerNormalWm2} of a day, worked out once [W/m2]. */
    public static double normalWm2(int n) {
        return NORMAL_W_M2[n];
    }

    /**
     * Days of a month in a year of 365 days.
     *
     * @param month 1 to 12
     */
    public static int daysIn(int month) {
        return DAYS[month - 1];
    }

    /**
     * Day number in a year of 365 days. 29 February is day 60, like 1 March: the sun formulas can't tell them apart.
     *
     * @param month 1 to 12
     * @param day of the month, 1 to 31
     * @return 1 to 365
     */
    public static int dayOfYear(int month, int day) {
        int n = day;
        for (int m = 1; m < month; m++) {
            n += DAYS[m - 1];
        }
        return n;
    }

    /**
     * The day whose extraterrestrial irradiation comes closest to the mean of its month.
     *
     * <p>Source: S. A. Klein, Calculation of monthly average insolation on tilted surfaces, Solar Energy 19 (1977) 325-329.
     *
     * @param month 1 to 12
     * @return day of the year: 17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344
     */
    public static int meanDayOfYear(int month) {
        return dayOfYear(month, MEAN_DAY_OF_MONTH[month - 1]);
    }

    /**
     * The month of the northern year with the same season: the same one in the north, six later in the south.
     *
     * @param latitude [deg], south negative
     * @param month 1 to 12
     */
    public static int northernMonth(double latitude, int month) {
        return latitude < 0 ? (month + MONTHS / 2 - 1) % MONTHS + 1 : month;
    }
}
