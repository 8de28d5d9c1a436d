package wayside.sizing.ledger;

/** What a run leaves behind, by hour of the trip: filled anew for each run. */
final class Track {
    /** What the bank holds after the hour [Wh]. */
    final double[] storeWh;
    /** How warm it is then [C]. */
    final float[] bankC;

    Track(int hours) {
        storeWh = new double[hours];
        bankC = new float[hours];
    }
}
