package wayside.sizing.ledger;

import wayside.sizing.brief.Chemistry;

/**
 * What trips are held against each other.
 *
 * @param nights of each trip
 * @param tiltDegrees of the panel, towards the equator
 * @param drivingHours a day
 * @param given whether the prediction is told the month's irradiation and mean temperature, or only the place
 * @param lagHours of the bank behind the air [h]
 * @param offsetK of the bank above the air [K]
 */
record ChanceCase(
        int nights,
        double tiltDegrees,
        double drivingHours,
        Chemistry chemistry,
        boolean given,
        double lagHours,
        double offsetK) {
    /** A flat panel, a lithium bank in its box, no driving, the month's means given. */
    static ChanceCase plain(int nights) {
        return new ChanceCase(nights, 0, 0, Chemistry.LFP, true, 8, 0);
    }

    ChanceCase tilted(double degrees) {
        return new ChanceCase(nights, degrees, drivingHours, chemistry, given, lagHours, offsetK);
    }

    ChanceCase driving(double hours) {
        return new ChanceCase(nights, tiltDegrees, hours, chemistry, given, lagHours, offsetK);
    }

    ChanceCase of(Chemistry other) {
        return new ChanceCase(nights, tiltDegrees, drivingHours, other, given, lagHours, offsetK);
    }

    ChanceCase placeAlone() {
        return new ChanceCase(nights, tiltDegrees, drivingHours, chemistry, false, lagHours, offsetK);
    }

    ChanceCase lagging(double hours) {
        return new ChanceCase(nights, tiltDegrees, drivingHours, chemistry, given, hours, offsetK);
    }

    String words() {
        return nights + " nights, " + chemistry.code() + (lagHours > 0 ? "" : " at the air")
                + (tiltDegrees > 0 ? ", tilted " + Math.round(tiltDegrees) : ", flat")
                + (drivingHours > 0 ? ", driving " + Math.round(drivingHours) + " h" : "")
                + (given ? "" : ", the place alone");
    }
}
