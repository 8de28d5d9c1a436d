package wayside.sizing.brief;

/** How sunny a month is, when the request says so. */
public sealed interface Sky extends Placed {
    /** @param kwhPerM2 mean irradiation of a day on the horizontal [kWh/m2] */
    record DailyIrradiation(At at, double kwhPerM2) implements Sky {
        public DailyIrradiation(double kwhPerM2) {
            this(At.ROOT, kwhPerM2);
        }
    }

    /** @param share of the extraterrestrial irradiation that reaches the ground, 0 to 1 */
    record Clearness(At at, double share) implements Sky {
        public Clearness(double share) {
            this(At.ROOT, share);
        }
    }
}
