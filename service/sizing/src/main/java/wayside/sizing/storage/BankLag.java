package wayside.sizing.storage;

import java.util.Optional;
import wayside.sizing.brief.BankBox;
import wayside.sizing.brief.BankPlacement;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Unit;

/**
 * How slowly a bank follows the air round it: the time constant of a mass in a box, {@code tau = m c / (U A)}, m [kg], c [Wh/kgK],
 * U [W/m2K] of the box's wall with the air about it, A [m2]. Heat of its own charging isn't counted.
 *
 * <p>30 kg in a box of 0.8 m2 of 12 mm plywood lag by about 5.5 hours, with 20 mm of foam instead by 10; bare in still air by 2
 * to 3. The materials' figures are common practice, no source.
 */
public final class BankLag {
    private static final double LAG_HOURS = 8;
    private static final double MASS_KG = 30;
    /** Of a whole battery [Wh/kgK]: 1 kJ/kgK. */
    private static final double HEAT_WH_PER_KG_K = 1.0 / 3.6;

    /** r_s: still air at both faces and r_g an air gap [m2K/W]. */
    private static final Expression LEAKAGE = Expression.commonPractice("U = 1 / (2 r_s + r_g + d_w / k_w + d_f / k_f)")
            .with("r_s", 0.125, Unit.COUNT)
            .with("r_g", 0.18, Unit.COUNT)
            .with("k_w", 0.13, Unit.COUNT)
            .with("k_f", 0.035, Unit.COUNT);

    private static final Expression LAG =
            Expression.commonPractice("tau = m c / (U A)").with("c", HEAT_WH_PER_KG_K, Unit.COUNT);
    private static final Expression OF_BOX = Expression.commonPractice("L = U A");
    private static final Expression OF_LAG =
            Expression.commonPractice("L = m c / tau").with("c", HEAT_WH_PER_KG_K, Unit.COUNT);

    private BankLag() {}

    /**
     * The lag of a bank where it stands.
     *
     * @return [h], 0 or more
     */
    public static Derived hours(BankPlacement placement) {
        String label = "lag of the bank behind the air";
        return box(placement)
                .<Derived>map(box -> LAG.value(
                        label,
                        Unit.HOUR,
                        mass(box).as("m"),
                        leakage(box).as("U"),
                        area(box).as("A")))
                .orElseGet(() -> Derived.byDefault(
                                label,
                                LAG_HOURS,
                                Unit.HOUR,
                                placement.at("lagHours"),
                                "A bank of some 30 kg in a closed box: it sleeps through short frosts and stays cold into the"
                                        + " day",
                                Source.commonPractice())
                        .unlessGiven(placement.lagHours()));
    }

    /**
     * The heat that a bank loses to the air for each degree that it is warmer: through its box, else as its lag has it for a bank
     * of a usual mass.
     *
     * @param lagHours above 0 [h]
     * @return [W/K]
     */
    static Derived lossWPerK(BankPlacement placement, Derived lagHours) {
        String label = "heat that the bank loses for each degree above the air";
        Optional<BankBox> box = box(placement);
        if (box.isPresent()) {
            return OF_BOX.value(
                    label,
                    Unit.WATT_PER_KELVIN,
                    leakage(box.get()).as("U"),
                    area(box.get()).as("A"));
        }
        Derived mass = Derived.byDefault(
                "mass of the bank that is heated",
                MASS_KG,
                Unit.KILOGRAM,
                placement.at("box"),
                "That of the bank whose lag is taken; give its box and mass where it is heavier",
                Source.commonPractice());
        return OF_LAG.value(label, Unit.WATT_PER_KELVIN, mass.as("m"), lagHours.as("tau"));
    }

    /** The box that makes the lag, where no lag was given. */
    private static Optional<BankBox> box(BankPlacement placement) {
        return placement.lagHours().isEmpty() ? placement.box() : Optional.empty();
    }

    private static Derived mass(BankBox box) {
        return Derived.given("mass of the bank in its box", box.massKg(), Unit.KILOGRAM, box.at("massKg"));
    }

    private static Derived area(BankBox box) {
        return Derived.given("area of the bank's box", box.areaM2(), Unit.SQUARE_METRE, box.at("areaM2"));
    }

    private static Derived leakage(BankBox box) {
        Derived plywood = Derived.byDefault(
                        "plywood of the bank's box",
                        0.012,
                        Unit.METRE,
                        box.at("plywoodM"),
                        "The wood that boxes are made of",
                        Source.commonPractice())
                .unlessGiven(box.plywoodM());
        Derived foam = Derived.byDefault(
                        "foam round the bank's box",
                        0,
                        Unit.METRE,
                        box.at("foamM"),
                        "No foam was given",
                        Source.commonPractice())
                .unlessGiven(box.foamM());
        return LEAKAGE.value(
                "heat that a square metre of the box lets through for each degree",
                Unit.COUNT,
                plywood.as("d_w"),
                foam.as("d_f"));
    }
}
