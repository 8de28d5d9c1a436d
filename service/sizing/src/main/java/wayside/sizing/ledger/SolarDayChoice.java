package wayside.sizing.ledger;

import wayside.sizing.solar.plane.Extraterrestrial;
import wayside.sizing.solar.plane.SunGeometry;

/** Finds the day whose extraterrestrial irradiation comes closest to a mean: Klein's mean day, at any latitude. */
final class SolarDayChoice {
    private final double phi;
    private final double meanKwhM2;
    private double smallest = Double.POSITIVE_INFINITY;
    private int best = 1;

    SolarDayChoice(double phi, double meanKwhM2) {
        this.phi = phi;
        this.meanKwhM2 = meanKwhM2;
    }

    /** Considers a day of the year. */
    void offer(int n) {
        double h0 = Extraterrestrial.dailyKwhM2(
                phi, SunGeometry.spencerDeclination(n), Extraterrestrial.spencerNormalWm2(n));
        double difference = Math.abs(h0 - meanKwhM2);
        if (difference < smallest) {
            smallest = difference;
            best = n;
        }
    }

    int best() {
        return best;
    }
}
