package wayside.sizing.solar;

/** Power out of an array, from the light on it and the heat of its cells. */
public final class ArrayOutput {
    /** Irradiance at which a panel's power is rated [W/m2]. Source: IEC 61215, standard test conditions. */
    public static final double STC_IRRADIANCE_W_M2 = 1000;

    /** Cell temperature at which it is rated [C]. Source: as above. */
    public static final double STC_CELL_C = 25;

    /** A string held a little below its best voltage gives a little more current than at its best point. Common practice. */
    static final double CURRENT_GAIN_BELOW_BEST = 1.05;

    private ArrayOutput() {}

    /**
     * Power at the panel's best working point: {@code P = P_stc G / 1000 (1 + gamma (Tc - 25)) f}.
     *
     * <p>Source: National Renewable Energy Laboratory, NREL/TP-6A20-62641 (2014), section on the module model.
     *
     * @param stcW rated power [W]
     * @param irradianceWm2 light that enters the cover [W/m2]
     * @param cellC cell temperature [C]
     * @param gammaPerK temperature coefficient of power [1/K], negative
     * @param lossFactor what the itemised losses leave [share]
     * @return [W], not negative
     */
    public static double powerW(double stcW, double irradianceWm2, double cellC, double gammaPerK, double lossFactor) {
        return stcW * irradianceWm2 / STC_IRRADIANCE_W_M2 * temperatureFactor(cellC, gammaPerK) * lossFactor;
    }

    /** Power at a cell temperature over power at 25 C: {@code 1 + gamma (Tc - 25)}, not negative. */
    public static double temperatureFactor(double cellC, double gammaPerK) {
        return Math.max(0, 1 + gammaPerK * (cellC - STC_CELL_C));
    }

    /**
     * Share of the best power that is left when a switching controller without a tracker ties the panel to the battery:
     * {@code min(1, 1.05 V_bat / Vmp(Tc))}, {@code Vmp(Tc) = Vmp (1 + beta (Tc - 25))}.
     *
     * <p>Common practice, no source: follows from the panel's flat current below its best voltage.
     *
     * @param batteryV [V]
     * @param vmpV of the string at 25 C [V]
     * @param betaPerK temperature coefficient of that voltage [1/K], negative
     * @param cellC [C]
     * @return [share]; 0 when the panel can't reach the battery's voltage
     */
    public static double pwmShare(double batteryV, double vmpV, double betaPerK, double cellC) {
        double vmp = vmpV * (1 + betaPerK * (cellC - STC_CELL_C));
        if (vmp <= 0) {
            return 0;
        }
        return Math.min(1, CURRENT_GAIN_BELOW_BEST * batteryV / vmp);
    }
}
