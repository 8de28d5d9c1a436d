package wayside.sizing.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.charging.AlternatorCharger;
import wayside.sizing.system.ArrayChoice;
import wayside.sizing.system.InverterChoice;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.system.StayBalance;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Shortfall;

/** Each part against what the loads, the trip and the vehicle ask of it. */
final class PartLaws {
    private PartLaws() {}

    /** What days of autonomy and the worst month ask; a chance takes the place of these. */
    static List<Law> ofTheDays(SizedSystem system) {
        List<Law> laws = new ArrayList<>();
        laws.add(judged(
                Law.of(
                        LawCode.BANK_CARRIES_THE_DAYS,
                        system.battery().neededWh(),
                        system.battery().bank().nominalEnergyWh()),
                system.battery().shortfall(system.site())));
        sun(system).ifPresent(laws::add);
        FrostLaw.find(system).ifPresent(laws::add);
        return laws;
    }

    private static Optional<Law> sun(SizedSystem system) {
        Optional<Shortfall> why = ArrayChoice.shortfall(system.site(), system.arrayNeed());
        if (why.isPresent()) {
            Shortfall shortfall = why.get();
            return Optional.of(Law.of(LawCode.SUN_FILLS_THE_DAY, shortfall.needed(), shortfall.available())
                    .broken(shortfall));
        }
        StayBalance worst = system.arrayNeed().worst();
        return system.array().map(array -> Law.of(LawCode.SUN_FILLS_THE_DAY, worst.arrayW(), array.powerW()));
    }

    static List<Law> ofTheInverter(InverterChoice inverter) {
        Optional<Shortfall> why = inverter.shortfall();
        Derived runs = inverter.hardest().powerOfOneW();
        Derived starts = inverter.hardestStart().startOfOneW();
        boolean cannotRun = runs.value() > inverter.rating().continuousW().value();
        return List.of(
                judged(
                        Law.of(
                                LawCode.INVERTER_RUNS_THE_HARDEST,
                                runs,
                                inverter.rating().continuousW()),
                        why.filter(shortfall -> cannotRun)),
                judged(
                        Law.of(
                                LawCode.INVERTER_STARTS_THE_HARDEST,
                                starts,
                                inverter.rating().surgeW()),
                        why.filter(shortfall -> !cannotRun)));
    }

    static Law ofTheAlternator(AlternatorCharger charger) {
        return judged(
                Law.of(LawCode.ALTERNATOR_SHARE, charger.inputCurrentA(), charger.usableCurrentA()),
                charger.shortfall());
    }

    private static Law judged(Law law, Optional<Shortfall> why) {
        return why.map(law::broken).orElse(law);
    }
}
