package wayside.sizing.storage;

/**
 * What a high current takes from a battery: {@code C(I) = C_n (C_n / (I t_n))^(k-1)}, with C_n [Ah] the capacity rated
 * over t_n [h], I [A] the current, k [1] Peukert's exponent. The hours it lasts are {@code t = t_n (C_n / (I t_n))^k}.
 *
 * <p>Valid for steady currents around the rated one; the capacity is capped at the rated one below it, so that a small
 * current is never credited with a larger battery. Source: W. Peukert, Ueber die Abhaengigkeit der Kapazitaet von der
 * Entladestromstaerke bei Bleiakkumulatoren, Elektrotechnische Zeitschrift 20, 1897 (cited from memory), in the form
 * normalised to the rated time that battery monitors use. The bare form {@code C / I^k} holds for a one-hour rating only
 * and must not be used with a 20-hour one.
 */
public final class Peukert {
    private Peukert() {}

    /**
     * @param ratedAh C_n [Ah], above 0
     * @param ratedHours t_n [h], above 0
     * @param currentA I [A], above 0
     * @param exponent k, 1 or more
     * @return hours until empty [h]
     */
    public static double hours(double ratedAh, double ratedHours, double currentA, double exponent) {
        return ratedHours * Math.pow(ratedAh / (currentA * ratedHours), exponent);
    }

    /** Capacity at a current [Ah], not more than rated. Parameters as in {@link #hours}. */
    public static double capacityAh(double ratedAh, double ratedHours, double currentA, double exponent) {
        return ratedAh * share(currentA * ratedHours / ratedAh, exponent);
    }

    /**
     * Share of the rated capacity that is left.
     *
     * @param multiple of the rated current, 0 or more
     * @param exponent k, 1 or more
     */
    public static double share(double multiple, double exponent) {
        return multiple <= 1 ? 1 : Math.pow(multiple, 1 - exponent);
    }
}
