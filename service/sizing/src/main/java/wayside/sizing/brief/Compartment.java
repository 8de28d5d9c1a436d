package wayside.sizing.brief;

import java.util.Locale;

/** Where in a vehicle a bank stands. */
public enum Compartment {
    /** In the living space, which is heated when it is cold. */
    CABIN,
    /** Under its floor, where some of the cabin's heat gets to. */
    UNDERFLOOR,
    /** In the open air, or in a box that nothing heats. */
    OUTSIDE;

    /** As the contract writes it. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
