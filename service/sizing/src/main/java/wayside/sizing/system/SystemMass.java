package wayside.sizing.system;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wayside.sizing.brief.InverterSize;
import wayside.sizing.brief.PartSize;
import wayside.sizing.brief.SystemWishes;
import wayside.sizing.brief.Vehicle;
import wayside.sizing.charging.AlternatorCharger;
import wayside.sizing.charging.ChargerRating;
import wayside.sizing.charging.ShoreCharger;
import wayside.sizing.sizes.Pieces;
import wayside.sizing.sizes.SizeFigure;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Input;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * Mass of a whole system: batteries, modules, controllers, chargers and inverter, and an allowance for cables, fuses, busbars
 * and brackets. A part that was given weighs what one of its size does.
 *
 * @param massKg of all
 */
public record SystemMass(Derived massKg) {
    private static final Expression ALL = Expression.commonPractice("m = (1 + a) sum(m_part)");
    private static final Expression EQUAL = Expression.definition("m = n m_1");
    private static final Expression PANELS = Expression.commonPractice("m = P k");

    static SystemMass of(
            Site site,
            BankChoice battery,
            Optional<ArrayChoice> array,
            Chargers chargers,
            Optional<InverterChoice> inverter,
            Optional<ConverterChoice> converter) {
        List<Input> parts = new ArrayList<>();
        parts.add(battery.bank().massKg().typical().as("m_part"));
        array.ifPresent(chosen -> {
            parts.add(modules(chosen).as("m_part"));
            parts.add(of(
                            "charge controllers",
                            chosen.controllers().size(),
                            chosen.controllers().count())
                    .as("m_part"));
        });
        SystemWishes wishes = site.brief().system();
        chargers.alternator()
                .map(charger -> charger(
                        "alternator charger",
                        charger.buyable(),
                        () -> AlternatorCharger.like(
                                chargers.need(),
                                wishes,
                                charger.chargerCurrentA().value())))
                .ifPresent(mass -> parts.add(mass.as("m_part")));
        chargers.shore()
                .map(charger -> charger(
                        "shore charger",
                        charger.buyable(),
                        () -> ShoreCharger.like(
                                chargers.need(), wishes, charger.chargerPowerW().value())))
                .ifPresent(mass -> parts.add(mass.as("m_part")));
        inverter.ifPresent(chosen -> parts.add(inverter(site, chosen).as("m_part")));
        converter
                .flatMap(chosen -> chosen.buyable().map(pieces -> of("DC converters", pieces.size(), chosen.count())))
                .ifPresent(mass -> parts.add(mass.as("m_part")));
        parts.add(allowance().as("a"));
        return new SystemMass(ALL.value("mass of the whole system", Unit.KILOGRAM, parts));
    }

    private static Derived modules(ArrayChoice array) {
        return array.buyable()
                .map(BuyableArray::massKg)
                .orElseGet(() -> PANELS.value(
                        "mass of the modules",
                        Unit.KILOGRAM,
                        array.powerW().as("P"),
                        ArrayMass.kgPerW().as("k")));
    }

    private static Derived charger(String name, Optional<ChargerRating> buyable, Supplier<PartSize> like) {
        return buyable.map(rating -> of(name, rating.size(), rating.count()))
                .orElseGet(() -> SizeFigure.massKg(like.get(), name + ": mass"));
    }

    private static Derived inverter(Site site, InverterChoice inverter) {
        Optional<Pieces<InverterSize>> buyable = inverter.rating().buyable();
        if (buyable.isPresent()) {
            return of("inverter", buyable.get().size(), one(buyable.get().count()));
        }
        List<InverterSize> ladder = site.sizes().inverters();
        double watts = inverter.rating().continuousW().value();
        InverterSize like = ladder.stream()
                .filter(size -> size.continuousW() >= watts)
                .findFirst()
                .orElseGet(() -> ladder.get(ladder.size() - 1));
        return SizeFigure.massKg(like, "inverter: mass");
    }

    private static Derived one(int count) {
        return Derived.convention("inverters", count, Unit.COUNT, "As many as work as one", Source.definition());
    }

    private static Derived of(String name, PartSize size, Derived count) {
        return EQUAL.value(
                name + ": mass of all",
                Unit.KILOGRAM,
                count.as("n"),
                SizeFigure.massKg(size, name + ": mass of one").as("m_1"));
    }

    private static Derived allowance() {
        return Derived.convention(
                "allowance for cables, fuses, busbars and brackets",
                0.15,
                Unit.SHARE,
                "About a seventh of the parts; weigh the vehicle when all is in",
                Source.commonPractice());
    }

    /** What is left of the vehicle's payload for it, where somebody said so [kg]. */
    public Optional<Derived> payloadKg(Site site) {
        Vehicle vehicle = site.brief().system().vehicle();
        return vehicle.payloadKg().isPresent()
                ? Optional.of(Derived.given(
                        "vehicle: payload left for the system",
                        vehicle.payloadKg().getAsDouble(),
                        Unit.KILOGRAM,
                        vehicle.at("payloadKg")))
                : Optional.empty();
    }
}
