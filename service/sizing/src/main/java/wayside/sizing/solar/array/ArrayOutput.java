package wayside.sizing.solar.array;

/** Power out of an array, from the light on it and the heat of its cells. */
public final class ArrayOutput {
    /** Irradiance at which a panel's power is rated [W/m2]. Source: IEC 61215, standard test conditions. */
    public static final double STC_IRRADIANCE_W_M2 = 1000;

    /** Cell temperature at which it is rated [C]. Source: as above. */
    public static final double STC_CELL_C = 25;

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
}
