package wayside.sizing.chance;

import java.util.Optional;
import wayside.sizing.system.BatteryPack;
import wayside.sizing.system.StringOption;

/**
 * A bank and an array that are tried together.
 *
 * @param bankWh rated energy of the bank [Wh]
 * @param pack the batteries that it is made of; empty when it was given
 * @param arrayW rated power of the array [W]
 * @param modules that it is made of; empty when it was given, or there is none
 */
record ChancePair(double bankWh, Optional<BatteryPack> pack, double arrayW, Optional<StringOption> modules) {
    static ChancePair of(BatteryPack pack, ArrayTried array) {
        return new ChancePair(pack.energyWh(), Optional.of(pack), array.powerW(), array.modules());
    }

    static ChancePair given(double bankWh, ArrayTried array) {
        return new ChancePair(bankWh, Optional.empty(), array.powerW(), array.modules());
    }

    /**
     * An array by itself.
     *
     * @param powerW rated [W]
     * @param modules that it is made of
     */
    record ArrayTried(double powerW, Optional<StringOption> modules) {
        static ArrayTried of(StringOption option) {
            return new ArrayTried(option.powerW(), Optional.of(option));
        }
    }
}
