package wayside.sizing.solar.plane;

/** Sunshine above the atmosphere, on a horizontal plane. */
public final class Extraterrestrial {
    /** Solar constant [W/m2]. Source: World Radiation Center, as in Duffie &amp; Beckman, section 1.2. */
    public static final double SOLAR_CONSTANT_W_M2 = 1367;

    private static final double TWO_PI = 2 * Math.PI;

    private Extraterrestrial() {}

    /**
     * Irradiance at normal incidence, the short form: {@code 1367 (1 + 0.033 cos(360 n / 365))}.
     *
     * <p>Source: Duffie &amp; Beckman, eq. 1.4.1a.
     *
     * @param n day of the year, 1 to 366
     * @return [W/m2]
     */
    public static double cosineNormalWm2(int n) {
        return SOLAR_CONSTANT_W_M2 * (1 + 0.033 * Math.cos(TWO_PI * n / 365));
    }

    /**
     * Irradiance at normal incidence, the form the hourly chain uses.
     *
     * <p>Source: J. W. Spencer, Search 2 (1971) 172; Duffie &amp; Beckman, eq. 1.4.1b.
     *
     * @param n day of the year, 1 to 366
     * @return [W/m2]
     */
    public static double spencerNormalWm2(int n) {
        double b = TWO_PI * (n - 1) / 365;
        return SOLAR_CONSTANT_W_M2
                * (1.000110
                        + 0.034221 * Math.cos(b)
                        + 0.001280 * Math.sin(b)
                        + 0.000719 * Math.cos(2 * b)
                        + 0.000077 * Math.sin(2 * b));
    }

    /**
     * Irradiation of a day: {@code H0 = 24 / pi G0n (cos phi cos delta sin ws + ws sin phi sin delta)}.
     *
     * <p>Source: Duffie &amp; Beckman, eq. 1.10.3, there in J/m2.
     *
     * @param phi latitude [rad]
     * @param delta declination [rad]
     * @param normalWm2 irradiance at normal incidence [W/m2]
     * @return H0 [kWh/m2], 0 in polar night
     */
    public static double dailyKwhM2(double phi, double delta, double normalWm2) {
        double ws = SunGeometry.sunsetHourAngle(phi, delta);
        double h = Math.cos(phi) * Math.cos(delta) * Math.sin(ws) + ws * Math.sin(phi) * Math.sin(delta);
        return Math.max(0, 0.024 / Math.PI * normalWm2 * h);
    }

    /**
     * Irradiation between two hour angles, the part below the horizon left out:
     * {@code I0 = 12 / pi G0n (cos phi cos delta (sin w2 - sin w1) + (w2 - w1) sin phi sin delta)}.
     *
     * <p>Source: Duffie &amp; Beckman, eq. 1.10.4, there in J/m2.
     *
     * @param w1 from [rad], -pi to pi
     * @param w2 to [rad], not before {@code w1}
     * @return I0 [kWh/m2]
     */
    public static double hourlyKwhM2(double phi, double delta, double normalWm2, double w1, double w2) {
        double ws = SunGeometry.sunsetHourAngle(phi, delta);
        double from = Math.max(w1, -ws);
        double to = Math.min(w2, ws);
        if (to <= from) {
            return 0;
        }
        double i = Math.cos(phi) * Math.cos(delta) * (Math.sin(to) - Math.sin(from))
                + (to - from) * Math.sin(phi) * Math.sin(delta);
        return Math.max(0, 0.012 / Math.PI * normalWm2 * i);
    }

    /**
     * Irradiation of a mean day of a month: the mean of {@link #dailyKwhM2} over all its days.
     *
     * @param latitudeDegrees -90 to 90
     * @param month 1 to 12
     * @return [kWh/m2]
     */
    public static double monthlyKwhM2(double latitudeDegrees, int month) {
        double phi = Math.toRadians(latitudeDegrees);
        int days = SolarCalendar.daysIn(month);
        double sum = 0;
        for (int day = 1; day <= days; day++) {
            int n = SolarCalendar.dayOfYear(month, day);
            sum += dailyKwhM2(phi, SolarCalendar.declination(n), SolarCalendar.normalWm2(n));
        }
        return sum / days;
    }
}
