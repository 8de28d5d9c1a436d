package wayside.sizing.laws;

import java.util.Comparator;
import java.util.Optional;
import wayside.sizing.brief.Compartment;
import wayside.sizing.journey.BankWarmth;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.system.StayBalance;
import wayside.sizing.trace.Caution;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Parameter;
import wayside.sizing.trace.Severity;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * A bank that is too cold or too hot to be charged through a stay carries it alone, from full: {@code n E_d <= E_cold eta_d} with
 * n the nights, E_d [Wh] what the bank must give a day beyond what still enters it, E_cold [Wh] what it gives at its
 * temperature, eta_d [share] its discharge. Common practice, no source: an energy balance.
 */
final class FrostLaw {
    private static final Expression ASKED = Expression.commonPractice("E = n E_d");
    private static final Expression ALLOWED = Expression.commonPractice("E = E_cold eta_d");

    private FrostLaw() {}

    /** Empty where every stay can charge the bank. */
    static Optional<Law> find(SizedSystem system) {
        return system.arrayNeed().balances().stream()
                .filter(StayBalance::shut)
                .max(Comparator.comparingDouble(balance ->
                        balance.stay().stay().nights() * balance.needWh().value()))
                .map(hardest -> law(system, hardest));
    }

    private static Law law(SizedSystem system, StayBalance hardest) {
        BatteryBank bank = system.battery().bank();
        String label = hardest.stay().label();
        Derived nights = Derived.given(
                label + ": nights",
                hardest.stay().stay().nights(),
                Unit.COUNT,
                hardest.stay().stay().at("nights"));
        Derived asked = ASKED.value(
                label + ": energy that the bank must carry alone",
                Unit.WATT_HOUR,
                nights.as("n"),
                hardest.needWh().as("E_d"));
        Derived allowed = ALLOWED.value(
                "energy that a full bank gives in the cold",
                Unit.WATT_HOUR,
                bank.coldUsableEnergyWh().as("E_cold"),
                bank.data().dischargeEfficiency().as("eta_d"));
        Law law = Law.of(LawCode.BANK_IS_CHARGED, asked, allowed);
        Parameter stay = Parameter.number("stay", hardest.stay().index() + 1, Unit.COUNT);
        BankWarmth warmth = hardest.stay().bank();
        boolean cold = warmth.meanC().value() < bank.data().highestChargeC().value();
        boolean inTheCabin = warmth.place().compartment() == Compartment.CABIN;
        if (asked.value() <= allowed.value()) {
            return law.with(new Caution(
                    carriesAlone(warmth, cold, inTheCabin, stay), Severity.WARNING, Source.commonPractice()));
        }
        Message why = cold ? tooCold(warmth, inTheCabin, stay) : Message.of(ShortfallCode.TOO_HOT_TO_CHARGE, stay);
        return law.broken(new Shortfall(why, asked, allowed));
    }

    private static Message carriesAlone(BankWarmth warmth, boolean cold, boolean inTheCabin, Parameter stay) {
        if (cold && !inTheCabin) {
            return Message.of(CautionCode.NOTHING_CHARGES_IT, stay);
        }
        Message there = Message.of(CautionCode.NOTHING_CHARGES_IT_THERE, stay);
        return cold ? withHeater(there, warmth) : there;
    }

    /** The cabin first, if it is not there yet, then a heater with what it takes. */
    private static Message tooCold(BankWarmth warmth, boolean inTheCabin, Parameter stay) {
        ShortfallCode code = inTheCabin ? ShortfallCode.TOO_COLD_IN_THE_CABIN : ShortfallCode.TOO_COLD_TO_CHARGE;
        return withHeater(Message.of(code, stay), warmth);
    }

    private static Message withHeater(Message why, BankWarmth warmth) {
        return warmth.missingHeater()
                .map(heater -> why.with(Parameter.number("power", heater.powerW()))
                        .with(Parameter.number("energy", heater.dayWh())))
                .orElse(why);
    }
}
