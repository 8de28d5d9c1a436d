package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wayside.sizing.brief.Chemistry;
import wayside.sizing.budget.EnergyBudget;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Whether one self-contained unit (battery, inverter, charger and outlets in a case) would do, or parts must be wired. The
 * limits are those that such units commonly have; the one at hand may differ. Common practice, no source.
 *
 * @param nominalEnergyWh rated energy that it would need [Wh]
 * @param outletCurrentLimitA of its 12 V outlet [A]
 * @param fits whether none of the common limits is passed
 * @param reasons in plain words: the limits that are passed, then what to weigh
 */
public record PowerUnit(Derived nominalEnergyWh, Derived outletCurrentLimitA, boolean fits, List<String> reasons) {
    private static final double OUTLET_A = 25;
    private static final double OUTLET_V = 12;
    private static final double LARGEST_WH = 4000;
    private static final double LARGEST_AC_W = 3000;
    private static final double LARGEST_SOLAR_W = 800;
    private static final double SOCKET_CHARGE_W = 100;

    public PowerUnit {
        reasons = List.copyOf(reasons);
    }

    static PowerUnit of(
            EnergyBudget budget,
            BankChoice bank,
            Optional<InverterChoice> inverter,
            Optional<ArrayChoice> array,
            Chargers chargers) {
        Derived nominal = lithium(bank).nominalEnergyWh();
        List<String> against = new ArrayList<>();
        add(against, nominal, LARGEST_WH, "It would need %.0f Wh; units of this kind end at about %.0f Wh.");
        double outletW = OUTLET_A * OUTLET_V;
        add(
                against,
                budget.demand().dc().peakPowerW(),
                outletW,
                "Your 12 V loads together draw %.0f W; its 12 V outlet carries 25 A, %.0f W.");
        inverter.ifPresent(i -> {
            add(
                    against,
                    i.demand().peakPowerW(),
                    LARGEST_AC_W,
                    "Your AC loads together draw %.0f W; such units give up to about %.0f W.");
            add(
                    against,
                    i.demand().surgePowerW(),
                    2 * LARGEST_AC_W,
                    "The hardest start takes %.0f W; such units give about %.0f W for a moment.");
        });
        array.ifPresent(a -> add(
                against,
                a.powerW(),
                LARGEST_SOLAR_W,
                "The array has %.0f W; its solar input takes up to about %.0f W."));
        chargers.alternator()
                .ifPresent(a -> add(
                        against,
                        a.chargerPowerW(),
                        SOCKET_CHARGE_W,
                        "You count on %.0f W while driving; a vehicle socket gives it about %.0f W."));
        return new PowerUnit(nominal, outletLimit(), against.isEmpty(), withAdvice(against));
    }

    private static void add(List<String> against, Derived needed, double limit, String text) {
        if (needed.value() > limit) {
            against.add(String.format(Locale.ROOT, text, needed.value(), limit));
        }
    }

    private static List<String> withAdvice(List<String> against) {
        List<String> reasons = new ArrayList<>(against);
        if (against.isEmpty()) {
            reasons.add("All your figures stay within what such units commonly give; look for usable watt-hours, not"
                    + " rated ones, and for the current of its 12 V outlet.");
            reasons.add("A unit needs no wiring and can be carried out; but when one part fails all of it goes for"
                    + " repair, and it can hardly be enlarged.");
        } else {
            reasons.add("Separate parts can be enlarged and repaired one by one, and charge from everything at once.");
        }
        return reasons;
    }

    /** Such units are made with lithium cells. */
    private static BatteryBank lithium(BankChoice bank) {
        return bank.bank().data().chemistry().isLeadAcid()
                ? bank.byChemistry().stream()
                        .filter(other -> other.data().chemistry() == Chemistry.LFP)
                        .findFirst()
                        .orElseThrow()
                : bank.bank();
    }

    private static Derived outletLimit() {
        return Derived.convention(
                "self-contained unit: limit of its 12 V outlet",
                OUTLET_A,
                Unit.AMPERE,
                "A common limit; 25 A at 12 V are 300 W",
                Source.commonPractice());
    }
}
