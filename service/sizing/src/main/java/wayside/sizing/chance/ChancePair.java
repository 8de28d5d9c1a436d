package wayside.sizing.chance;

import java.util.Optional;
import java.util.OptionalDouble;
import wayside.sizing.system.BatteryPack;
import wayside.sizing.system.StringOption;

/**
 * A bank, an array and a charger on the engine that are tried together.
 *
 * @param bankWh rated energy of the bank [Wh]
 * @param pack the batteries that it is made of; empty when it was given
 * @param arrayW rated power of the array [W]
 * @param modules that it is made of; empty when it was given, or there is none
 * @param engineA output of the charger on the engine [A]; empty when it is not looked for
 */
record ChancePair(
        double bankWh,
        Optional<BatteryPack> pack,
        double arrayW,
        Optional<StringOption> modules,
        OptionalDouble engineA) {
    static ChancePair of(BankTried bank, ArrayTried array, OptionalDouble engineA) {
        return new ChancePair(bank.energyWh(), bank.pack(), array.powerW(), array.modules(), engineA);
    }

    /** The same beside another bank. */
    ChancePair with(BankTried bank) {
        return new ChancePair(bank.energyWh(), bank.pack(), arrayW, modules, engineA);
    }

    /** The same with another array. */
    ChancePair with(ArrayTried array) {
        return new ChancePair(bankWh, pack, array.powerW(), array.modules(), engineA);
    }

    /** The same with another charger on the engine. */
    ChancePair with(OptionalDouble otherA) {
        return new ChancePair(bankWh, pack, arrayW, modules, otherA);
    }

    /** Whether it has no more of anything than another, which then runs flat no more often. */
    boolean isWithin(ChancePair other) {
        return bankWh <= other.bankWh && arrayW <= other.arrayW && engineA.orElse(0) <= other.engineA.orElse(0);
    }

    /**
     * A bank by itself.
     *
     * @param energyWh rated [Wh]
     * @param pack the batteries that it is made of; empty when it was given
     */
    record BankTried(double energyWh, Optional<BatteryPack> pack) {
        static BankTried of(BatteryPack pack) {
            return new BankTried(pack.energyWh(), Optional.of(pack));
        }

        static BankTried given(double energyWh) {
            return new BankTried(energyWh, Optional.empty());
        }
    }

    /**
     * An array by itself.
     *
     * @param powerW rated [W]
     * @param modules that it is made of
     */
    record ArrayTried(double powerW, Optional<StringOption> modules) {
        static final ArrayTried NONE = new ArrayTried(0, Optional.empty());

        static ArrayTried of(StringOption option) {
            return new ArrayTried(option.powerW(), Optional.of(option));
        }

        static ArrayTried given(double powerW) {
            return new ArrayTried(powerW, Optional.empty());
        }

        /** With its controllers; 0 when it was given [kg]. */
        double massKg() {
            return modules.map(StringOption::massKg).orElse(0.0);
        }
    }
}
