package wayside.sizing.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wayside.sizing.charging.AlternatorCharger;
import wayside.sizing.system.ArrayChoice;
import wayside.sizing.system.ConverterChoice;
import wayside.sizing.system.InverterChoice;
import wayside.sizing.system.SizedSystem;
import wayside.sizing.system.StayBalance;
import wayside.sizing.trace.CautionCode;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.LawCode;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;

/** Each part against what the loads, the trip and the vehicle ask of it. */
final class PartLaws {
    private PartLaws() {}

    /** What days of autonomy and the worst month ask; a chance takes the place of these. */
    static List<Law> ofTheDays(SizedSystem system) {
        List<Law> laws = new ArrayList<>();
        laws.add(Law.of(
                LawCode.BANK_CARRIES_THE_DAYS,
                system.battery().neededWh(),
                system.battery().bank().nominalEnergyWh()));
        StayBalance worst = system.arrayNeed().worst();
        system.array().ifPresent(array -> laws.add(Law.of(LawCode.SUN_FILLS_THE_DAY, worst.arrayW(), array.powerW())));
        FrostLaw.find(system).ifPresent(laws::add);
        return laws;
    }

    /** Whether there is room for it, and whether its parts are made. */
    static List<Law> ofItsRoom(SizedSystem system) {
        List<Law> laws = new ArrayList<>();
        system.array().ifPresent(array -> laws.add(roof(array)));
        system.mass()
                .payloadKg(system.site())
                .map(payload -> Law.of(
                                LawCode.MASS_WITHIN_THE_PAYLOAD, system.mass().massKg(), payload)
                        .orElse(Message.of(ShortfallCode.PAYLOAD_TOO_SMALL)))
                .ifPresent(laws::add);
        return laws;
    }

    /** A given array on a roof that nobody measured is for its owner to measure. */
    private static Law roof(ArrayChoice array) {
        Law law = Law.of(LawCode.PANELS_ON_THE_ROOF, array.areaM2(), array.roofM2());
        return array.cautions().stream()
                .filter(caution -> caution.message().code() == CautionCode.ARRAY_LARGER_THAN_ROOF)
                .findFirst()
                .map(law::with)
                .orElse(law);
    }

    /** What bank, array and inverter themselves say they are short of. */
    static List<Shortfall> shortfalls(SizedSystem system) {
        List<Shortfall> all = new ArrayList<>(system.battery().shortfalls(system.site()));
        all.addAll(ArrayChoice.shortfalls(system.site(), system.arrayNeed(), system.array()));
        system.inverter().flatMap(chosen -> chosen.notMade(system.site())).ifPresent(all::add);
        system.converter().flatMap(ConverterChoice::notMade).ifPresent(all::add);
        return all;
    }

    /** The law that a part's shortfall breaks; whatever keeps an array small, the sun then does not fill the day. */
    static LawCode brokenBy(SizedSystem system, Shortfall shortfall) {
        if (shortfall.needed().equals(system.arrayNeed().worst().arrayW())) {
            return LawCode.SUN_FILLS_THE_DAY;
        }
        return switch ((ShortfallCode) shortfall.message().code()) {
            case BANK_TOO_SMALL -> LawCode.BANK_CARRIES_THE_DAYS;
            case NO_SUN, ARRAY_TOO_SMALL -> LawCode.SUN_FILLS_THE_DAY;
            case ROOF_TOO_SMALL -> LawCode.PANELS_ON_THE_ROOF;
            case NO_CONTROLLER -> LawCode.CONTROLLER_VOLTAGE;
            case LOCKER_TOO_SMALL -> LawCode.BANK_IN_ITS_LOCKER;
            default -> LawCode.PARTS_ARE_MADE;
        };
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
