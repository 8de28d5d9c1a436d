package wayside.sizing.ledger;

/** The standard normal distribution, both ways. */
final class Normal {
    private Normal() {}

    /**
     * Phi(z).
     *
     * <p>Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 1964, eq. 26.2.17; its error is below
     * 7.5e-8.
     */
    static double cumulative(double z) {
        double x = Math.abs(z);
        double t = 1 / (1 + 0.2316419 * x);
        double series =
                t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        double tail = 0.3989422804014327 * Math.exp(-x * x / 2) * series;
        return z < 0 ? tail : 1 - tail;
    }

    /**
     * The z that a share of all values falls short of.
     *
     * <p>Source: M. J. Wichura, Algorithm AS 241, Applied Statistics 37 (1988) 477-484, routine PPND7: good to about one part
     * in ten millions.
     *
     * @param share above 0 and below 1
     */
    static double quantile(double share) {
        double q = share - 0.5;
        if (Math.abs(q) <= 0.425) {
            double r = 0.180625 - q * q;
            return q
                    * (((59.109374720 * r + 159.29113202) * r + 50.434271938) * r + 3.3871327179)
                    / (((67.187563600 * r + 78.757757664) * r + 17.895169469) * r + 1);
        }
        double r = Math.sqrt(-Math.log(q < 0 ? share : 1 - share));
        double z = r <= 5 ? middle(r - 1.6) : far(r - 5);
        return q < 0 ? -z : z;
    }

    private static double middle(double r) {
        return (((0.17023821103 * r + 1.3067284816) * r + 2.7568153900) * r + 1.4234372777)
                / ((0.12021132975 * r + 0.73700164250) * r + 1);
    }

    private static double far(double r) {
        return (((0.017337203997 * r + 0.42868294337) * r + 3.0812263860) * r + 6.6579051150)
                / ((0.012258202635 * r + 0.24197894225) * r + 1);
    }
}
