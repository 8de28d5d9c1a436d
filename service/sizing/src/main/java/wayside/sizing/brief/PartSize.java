package wayside.sizing.brief;

/** A part that exists in one size: a rung of a ladder. */
public interface PartSize {
    SizeOrigin origin();

    /** Of one piece [kg]. */
    double massKg();

    /** Of one piece. */
    Box box();
}
