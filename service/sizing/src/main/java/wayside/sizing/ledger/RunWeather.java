package wayside.sizing.ledger;

/** The sun and the air of one run, by hour of the trip from its first midnight; filled anew for each run. */
public final class RunWeather {
    /** Energy out of the charge controller for each rated watt of array [Wh/W]. */
    final double[] yieldWhPerW;
    /** Air [C]; a float is good to a millionth of a degree and takes half the room. */
    final float[] airC;

    public RunWeather(int hours) {
        yieldWhPerW = new double[hours];
        airC = new float[hours];
    }

    /** Takes over another run of the same trip. */
    void set(RunWeather other) {
        System.arraycopy(other.yieldWhPerW, 0, yieldWhPerW, 0, yieldWhPerW.length);
        System.arraycopy(other.airC, 0, airC, 0, airC.length);
    }
}
