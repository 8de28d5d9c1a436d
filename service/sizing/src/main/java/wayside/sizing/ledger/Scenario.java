package wayside.sizing.ledger;

import java.util.List;
import wayside.sizing.storage.ChemistryData;

/**
 * A system on its trip, in the plain figures of the ledger: what may be changed to see what it does.
 *
 * @param heater of the bank
 * @param nominalWh rated energy of the bank [Wh]
 * @param ageShare what age has left of it
 * @param solarW rated power of the array [W]
 * @param startShare state of charge at the first midnight
 * @param bounds what the bank's maker says that it bears
 */
public record Scenario(
        List<LedgerDay> days,
        LedgerHeater heater,
        ChemistryData data,
        double nominalWh,
        double ageShare,
        double solarW,
        double startShare,
        BankBounds bounds) {
    public Scenario {
        days = List.copyOf(days);
    }

    public Ledger ledger() {
        double ratio =
                data.meanChargeCellVoltageV().value() / data.cellVoltageV().value();
        return new Ledger(days, new LedgerBank(data, nominalWh, ageShare, ratio, bounds), heater, solarW, startShare);
    }

    public Scenario withSolar(double newSolarW) {
        return new Scenario(days, heater, data, nominalWh, ageShare, newSolarW, startShare, bounds);
    }

    /** The same when age has left so much of the bank [share]. */
    public Scenario aged(double newAgeShare) {
        return new Scenario(days, heater, data, nominalWh, newAgeShare, solarW, startShare, bounds);
    }

    public Scenario withBank(double newNominalWh) {
        return new Scenario(days, heater, data, newNominalWh, ageShare, solarW, startShare, bounds);
    }
}
