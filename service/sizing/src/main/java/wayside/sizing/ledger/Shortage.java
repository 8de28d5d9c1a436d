package wayside.sizing.ledger;

import java.util.Arrays;
import java.util.List;
import wayside.sizing.trace.Unit;

/** Which loads went short, on which nights and by how much, over many runs. */
final class Shortage {
    private final List<List<LoadHours>> stays;
    private final double[][] essentialParts;
    private final double[][] otherParts;
    private final long[][] shortNights;

    private final double[] essentialToday = new double[Unit.HOURS_PER_DAY];
    private final double[] otherToday = new double[Unit.HOURS_PER_DAY];
    private int essentialHours;
    private int otherHours;

    /**
     * Nothing yet.
     *
     * @param stays the loads of each, in the order of the load list; empty where nobody asks
     */
    Shortage(List<List<LoadHours>> stays) {
        this.stays = stays;
        essentialParts = new double[stays.size()][Unit.HOURS_PER_DAY];
        otherParts = new double[stays.size()][Unit.HOURS_PER_DAY];
        shortNights = stays.stream().map(loads -> new long[loads.size()]).toArray(long[][]::new);
    }

    /** An hour of the day at hand leaves parts of what is wanted unmet. */
    void goesShort(int hour, double essentialPart, double otherPart) {
        essentialToday[hour] = essentialPart;
        otherToday[hour] = otherPart;
        essentialHours |= essentialPart > 0 ? 1 << hour : 0;
        otherHours |= otherPart > 0 ? 1 << hour : 0;
    }

    /** The day at hand is over. */
    void closeDay(int stay) {
        if ((essentialHours | otherHours) == 0) {
            return;
        }
        if (!stays.isEmpty()) {
            List<LoadHours> loads = stays.get(stay);
            for (int i = 0; i < shortNights[stay].length; i++) {
                LoadHours load = loads.get(i);
                shortNights[stay][i] += (load.hours & (load.essential ? essentialHours : otherHours)) == 0 ? 0 : 1;
            }
            addTo(essentialParts[stay], essentialToday);
            addTo(otherParts[stay], otherToday);
        }
        Arrays.fill(essentialToday, 0);
        Arrays.fill(otherToday, 0);
        essentialHours = otherHours = 0;
    }

    /** Adds the runs that follow. */
    void add(Shortage next) {
        for (int stay = 0; stay < stays.size(); stay++) {
            addTo(essentialParts[stay], next.essentialParts[stay]);
            addTo(otherParts[stay], next.otherParts[stay]);
            for (int i = 0; i < shortNights[stay].length; i++) {
                shortNights[stay][i] += next.shortNights[stay][i];
            }
        }
    }

    private static void addTo(double[] sums, double[] more) {
        for (int hour = 0; hour < sums.length; hour++) {
            sums[hour] += more[hour];
        }
    }

    /** What a load misses over all runs [Wh]. */
    double unmetWh(int load) {
        double unmetWh = 0;
        for (int stay = 0; stay < stays.size(); stay++) {
            LoadHours wanted = stays.get(stay).get(load);
            double[] parts = wanted.essential ? essentialParts[stay] : otherParts[stay];
            for (int hour = 0; hour < parts.length; hour++) {
                unmetWh += parts[hour] * wanted.wantedW[hour];
            }
        }
        return unmetWh;
    }

    /** Nights of all runs on which it did. */
    long shortNights(int load) {
        long nights = 0;
        for (long[] stay : shortNights) {
            nights += stay[load];
        }
        return nights;
    }

    /** What a load wants on a trip with so many nights of each stay [Wh]. */
    double wantedWh(int load, int[] nights) {
        double wantedWh = 0;
        for (int stay = 0; stay < stays.size(); stay++) {
            wantedWh += nights[stay] * stays.get(stay).get(load).wantedWh;
        }
        return wantedWh;
    }
}
