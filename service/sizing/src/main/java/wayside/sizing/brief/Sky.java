package wayside.sizing.brief;

/** How sunny a month is, when the request says so. */
public sealed interface Sky {
    /** @param kwhPerM2 mean irradiation of a day on the horizontal [kWh/m2] */
    record DailyIrradiation(double kwhPerM2) implements Sky {}

    /** @param share of the extraterrestrial irradiation that reaches the ground, 0 to 1 */
    record Clearness(double share) implements Sky {}
}
