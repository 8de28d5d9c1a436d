package wayside.sizing.brief;

/** Where a load is plugged in: the battery's direct current, or mains-like alternating current from an inverter. */
public enum Supply {
    DC,
    AC
}
