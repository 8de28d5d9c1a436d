package wayside.sizing.storage;

/**
 * When charge may go in and out. A lithium cell that is charged below 0 C plates metal on its anode: it loses capacity
 * for good and may later short inside. It may be discharged there. Common practice, no source: the makers' limits.
 */
public final class ChargeWindow {
    private ChargeWindow() {}

    /** Whether charge may enter at this cell temperature [C]; the limits themselves are inside the window. */
    public static boolean mayCharge(double lowestChargeC, double highestChargeC, double cellC) {
        return cellC >= lowestChargeC && cellC <= highestChargeC;
    }

    public static boolean mayCharge(ChemistryData data, double cellC) {
        return mayCharge(data.lowestChargeC().value(), data.highestChargeC().value(), cellC);
    }

    public static boolean mayDischarge(ChemistryData data, double cellC) {
        return cellC >= data.lowestDischargeC().value()
                && cellC <= data.highestDischargeC().value();
    }
}
